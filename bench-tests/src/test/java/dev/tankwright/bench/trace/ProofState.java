package dev.tankwright.bench.trace;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.ProofFingerprint;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Whether the proof by exhaustion that lies in the repository is a proof of this build's
 * controller. A proof takes hours and a change of the controller minutes, so a proof of another
 * controller is no fault of a build; but it is told at the end of every build.
 */
final class ProofState {
  private static final String SETS = "docs/exploration-sets.csv";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private ProofState() {}

  /** Lines for the end of a build. */
  static List<String> lines(Path root) throws IOException {
    try (Reader reader = Files.newBufferedReader(root.resolve(SETS))) {
      return lines(reader, ProofFingerprint.of(DeviceProfile.sixLitre()));
    }
  }

  static List<String> lines(Reader sets, String fingerprint) throws IOException {
    List<CSVRecord> proven = FORMAT.parse(sets).getRecords();
    Set<String> here =
        proven.stream()
            .filter(set -> set.get("fingerprint").equals(fingerprint))
            .map(set -> set.get("set"))
            .collect(Collectors.toSet());
    List<FaultySet> wanted = FaultySet.whole();
    long found = wanted.stream().filter(set -> here.contains(set.text())).count();
    if (found == wanted.size()) {
      return List.of("[proof] whole: " + found + " sets proven for this controller");
    }
    return List.of(
        "[proof] NOT OF THIS CONTROLLER: "
            + (wanted.size() - found)
            + " of "
            + wanted.size()
            + " sets in "
            + SETS
            + " are missing or of another fingerprint than "
            + fingerprint,
        "[proof] prove them with: java -jar simulator/target/tankwright.jar explore --proven "
            + SETS);
  }
}
