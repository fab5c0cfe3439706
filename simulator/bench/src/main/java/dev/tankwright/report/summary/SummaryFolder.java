package dev.tankwright.report.summary;

import dev.tankwright.report.files.Manifest;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunFiles;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.results.SavedRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The summary of a folder of results, and the list of checksums of all that it speaks of. Both are
 * written anew from what stands in the folder.
 */
public final class SummaryFolder {
  /** The page to print and sign, see {@link SummaryPage}. */
  public static final String PAGE = "summary.html";

  /** What has changed against an earlier release, where it was asked for. */
  public static final String CHANGES = "changes.html";

  private SummaryFolder() {}

  /**
   * Writes summary and list of runs that have just been made, and removes what had changed against
   * an earlier release.
   *
   * @param folder the folder above those of the runs
   * @param labels their folders below it, with slashes
   * @throws UnwritableException when a file cannot be read again or written
   */
  public static void writeRuns(Path folder, List<String> labels) {
    List<SavedRun> runs = new ArrayList<>();
    try {
      Files.deleteIfExists(folder.resolve(CHANGES));
      for (String label : labels) {
        Path file = folder.resolve(label).resolve(RunFiles.RESULT);
        runs.add(SavedRun.read(Results.bytes(file), label, file.toString()));
      }
    } catch (UnreadableException e) {
      throw new UnwritableException(e.getMessage(), new IOException("changed in the meantime"));
    } catch (IOException e) {
      throw new UnwritableException(
          folder.resolve(CHANGES) + " of an earlier run cannot be removed (" + e + ")", e);
    }
    write(new RunResults(folder, runs));
  }

  /**
   * Writes summary and list of results whose files stand in their folder.
   *
   * @throws UnwritableException when a file cannot be read again or written
   */
  public static void write(Results results) {
    OutputFolder out = new OutputFolder(results.folder());
    List<String> files = files(results);
    Manifest spokenOf = manifest(results.folder(), files);
    out.place(PAGE, stream -> stream.write(SummaryPage.render(results, spokenOf)));
    list(results);
  }

  /** Writes the list alone, after another page has come into the folder. */
  static void list(Results results) {
    List<String> files = new ArrayList<>(files(results));
    for (String page : List.of(PAGE, CHANGES)) {
      if (Files.exists(results.folder().resolve(page))) {
        files.add(page);
      }
    }
    byte[] document = manifest(results.folder(), files).document();
    new OutputFolder(results.folder()).place(Manifest.NAME, out -> out.write(document));
  }

  /** The files that the summary speaks of, below the folder, with slashes. */
  private static List<String> files(Results results) {
    List<String> files = new ArrayList<>();
    if (results instanceof CampaignResults) {
      files.addAll(below(results.folder()));
    } else {
      for (SavedRun run : ((RunResults) results).runs()) {
        String before = run.label().isEmpty() ? "" : run.label() + "/";
        for (String name : RunFiles.FILES) {
          if (Files.exists(results.folder().resolve(before + name))) {
            files.add(before + name);
          }
        }
        String page = before + PAGE;
        if (!before.isEmpty() && Files.exists(results.folder().resolve(page))) {
          files.add(page);
        }
      }
    }
    return files;
  }

  /** Everything that a campaign left, its pages about itself and hidden files apart. */
  private static List<String> below(Path folder) {
    try (Stream<Path> tree = Files.walk(folder, Results.DEEPEST)) {
      return tree.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .filter(path -> !path.startsWith(".") && !path.contains("/."))
          .filter(path -> !List.of(PAGE, CHANGES, Manifest.NAME).contains(path))
          .filter(path -> !path.endsWith("/" + Manifest.NAME))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UnwritableException(folder + " cannot be listed (" + e + ")", e);
    }
  }

  private static Manifest manifest(Path folder, List<String> files) {
    try {
      return Manifest.of(folder, files);
    } catch (IOException e) {
      throw new UnwritableException("A file of " + folder + " cannot be read again (" + e + ")", e);
    }
  }
}
