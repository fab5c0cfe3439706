package dev.tankwright.report.changes;

import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.summary.SummaryFolder;

/** The page of a comparison, in the folder of the results now. */
public final class ChangesFolder {
  private ChangesFolder() {}

  /**
   * Writes {@code changes.html}, the summary and the list of checksums, all in the folder of the
   * results now; nothing is written to the baseline.
   *
   * @throws UnwritableException when a file cannot be written
   */
  public static void write(Comparison comparison) {
    OutputFolder folder = new OutputFolder(comparison.after().folder());
    folder.place(SummaryFolder.CHANGES, out -> out.write(ChangesPage.render(comparison)));
    SummaryFolder.write(comparison.after());
  }
}
