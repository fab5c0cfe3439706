package dev.tankwright.report.campaign;

import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.junit.CampaignJunit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * The files that a campaign leaves in a directory beside its results. Each is written beside its
 * place and moved there in one step. Not to be used by two threads on one directory.
 */
public final class CampaignFolder {
  /** The matrix: one line for each cell, see {@link CampaignCsv}. */
  public static final String CELLS = "matrix.csv";

  /** One line for each case, see {@link CampaignCsv}. */
  public static final String CASES = "cases.csv";

  /** The cells for a build server, see {@link CampaignJunit}. */
  public static final String JUNIT = "junit.xml";

  private final Path directory;

  /** The folder at that path; nothing is touched yet. */
  public CampaignFolder(Path directory) {
    this.directory = directory;
  }

  /**
   * Writes every file, and makes the directory where it is missing.
   *
   * @throws UnwritableException when the directory cannot be made or a file cannot be written
   */
  public void write(CampaignResult result) {
    OutputFolder folder = new OutputFolder(directory);
    folder.make();
    folder.place(CELLS, out -> out.write(CampaignCsv.cells(result)));
    folder.place(CASES, out -> out.write(CampaignCsv.cases(result)));
    folder.place(JUNIT, out -> out.write(CampaignJunit.of(result)));
  }

  /**
   * Writes text files, and makes the directory where it is missing.
   *
   * @return the files, in the order of their names here
   * @throws UnwritableException when the directory cannot be made or a file cannot be written
   */
  public List<Path> write(List<String> names, List<String> texts) {
    OutputFolder folder = new OutputFolder(directory);
    folder.make();
    for (int i = 0; i < names.size(); i++) {
      byte[] content = texts.get(i).getBytes(StandardCharsets.UTF_8);
      folder.place(names.get(i), out -> out.write(content));
    }
    return names.stream().map(directory::resolve).toList();
  }
}
