package dev.tankwright.report.exploration;

import dev.tankwright.explore.SetResult;
import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Proven sets as lines of comma-separated values by RFC 4180. */
final class ProvenSetLines {
  /** The line of headings, without its end. */
  static final String HEADINGS = "set,states,transitions,depth,bytes,seconds,fingerprint";

  private static final String END = "\r\n";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader(HEADINGS.split(",")).setSkipHeaderRecord(true).get();

  private ProvenSetLines() {}

  static String headings() {
    return HEADINGS + END;
  }

  /**
   * Whether this is a beginning of such a file, be it only a part of the line of headings. Lines
   * may have lost their carriage returns on the way through a version control.
   */
  static boolean isBeginning(String text) {
    int end = text.indexOf('\n');
    return end < 0
        ? headings().startsWith(text)
        : text.substring(0, end).stripTrailing().equals(HEADINGS);
  }

  static String line(SetResult result, long seconds, String fingerprint) {
    return CSVFormat.RFC4180.format(
            result.faulty(),
            result.states(),
            result.transitions(),
            result.depth(),
            result.bytes(),
            seconds,
            fingerprint)
        + END;
  }

  /**
   * The sets of one fingerprint by their names.
   *
   * @param text whole lines, that of headings first
   * @throws IllegalArgumentException with the number of the line, when one holds something else
   */
  static Map<String, SetResult> read(String text, String fingerprint) throws IOException {
    Map<String, SetResult> sets = new LinkedHashMap<>();
    for (CSVRecord line : FORMAT.parse(new StringReader(text))) {
      try {
        if (line.get("fingerprint").equals(fingerprint)) {
          SetResult result = result(line);
          sets.put(result.faulty(), result);
        }
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(
            (line.getRecordNumber() + 1) + ": not a proven set (" + e.getMessage() + ")", e);
      }
    }
    return sets;
  }

  private static SetResult result(CSVRecord line) {
    return new SetResult(
        line.get("set"),
        Integer.parseInt(line.get("states")),
        Long.parseLong(line.get("transitions")),
        Integer.parseInt(line.get("depth")),
        Long.parseLong(line.get("bytes")),
        true,
        List.of(),
        "");
  }
}
