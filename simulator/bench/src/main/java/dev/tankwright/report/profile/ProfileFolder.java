package dev.tankwright.report.profile;

import dev.tankwright.plant.facts.BathFacts;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnwritableException;
import java.nio.file.Path;

/** The file that a look at a bath's profile leaves in a directory. */
public final class ProfileFolder {
  /** The page for people, see {@link ProfilePage}. */
  public static final String PAGE = "profile.html";

  private ProfileFolder() {}

  /**
   * Writes the page, and makes the directory where it is missing.
   *
   * @throws UnwritableException when the directory cannot be made or the file cannot be written
   */
  public static void write(Path directory, BathFacts facts) {
    OutputFolder folder = new OutputFolder(directory);
    folder.make();
    folder.place(PAGE, out -> out.write(ProfilePage.render(facts)));
  }
}
