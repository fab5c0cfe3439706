package dev.tankwright.report.results;

import dev.tankwright.campaign.ResultFile;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.text.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a folder of results tells: of one run, of the runs in the folders below it, or of a
 * campaign.
 */
public sealed interface Results permits RunResults, CampaignResults {
  /** Largest document that is read, bytes: far beyond what is ever written. */
  int LARGEST_BYTES = 64 << 20;

  /** How deep below the folder runs are looked for. */
  int DEEPEST = 16;

  /** The folder. */
  Path folder();

  /** True when everything that was required was put to the test and held. */
  boolean allHeld();

  /** Everything that can be compared, in the order in which it is shown. */
  List<JudgedLine> lines();

  /**
   * Reads a folder that {@code tankwright run … --out} or {@code tankwright campaign … --out} left.
   *
   * @throws UnreadableException when it is no such folder, or when a document in it is cut off, of
   *     another kind or of another version
   */
  static Results read(Path folder) throws UnreadableException {
    if (!Files.isDirectory(folder)) {
      String what = Files.exists(folder) ? "this is not a folder" : "there is no such folder";
      throw new UnreadableException(folder + ": " + what + "; " + whatWouldBeRight());
    }
    if (Files.exists(folder.resolve(ResultFile.NAME))) {
      return CampaignResults.read(folder);
    }
    List<Path> found = documents(folder);
    if (found.isEmpty()) {
      throw new UnreadableException(
          folder
              + ": no result in this folder; it has neither "
              + RunFiles.RESULT
              + " nor "
              + ResultFile.NAME
              + "; "
              + whatWouldBeRight());
    }
    return runs(folder, found);
  }

  private static RunResults runs(Path folder, List<Path> found) throws UnreadableException {
    List<SavedRun> runs = new ArrayList<>();
    for (Path document : found) {
      Path place = folder.relativize(document).getParent();
      String label = place == null ? "" : place.toString().replace('\\', '/');
      runs.add(SavedRun.read(bytes(document), label, document.toString()));
    }
    if (runs.size() > 1 && runs.get(0).label().isEmpty()) {
      throw new UnreadableException(
          folder
              + ": this folder holds a run, and its subfolders hold the runs of "
              + Words.count(runs.size() - 1, "folder")
              + "; give each its own folder with --out");
    }
    return new RunResults(folder, runs);
  }

  private static String whatWouldBeRight() {
    return "name a folder that 'tankwright run' or 'tankwright campaign' wrote with --out";
  }

  private static List<Path> documents(Path folder) throws UnreadableException {
    try (Stream<Path> tree = Files.walk(folder, DEEPEST)) {
      return tree.filter(file -> file.endsWith(RunFiles.RESULT))
          .filter(Files::isRegularFile)
          .sorted()
          // A run of the folder itself comes first, whatever its neighbours are called.
          .sorted((a, b) -> Boolean.compare(isOwn(folder, b), isOwn(folder, a)))
          .toList();
    } catch (IOException e) {
      throw new UnreadableException(folder + ": the folder cannot be listed (" + e + ")");
    }
  }

  private static boolean isOwn(Path folder, Path document) {
    return folder.equals(document.getParent());
  }

  /** The bytes of a document of results. */
  static byte[] bytes(Path document) throws UnreadableException {
    try {
      long size = Files.size(document);
      if (size > LARGEST_BYTES) {
        throw new UnreadableException(
            document + ": " + size + " bytes; a result document is far smaller");
      }
      return Files.readAllBytes(document);
    } catch (IOException e) {
      throw new UnreadableException(document + ": the file cannot be read (" + e + ")");
    }
  }
}
