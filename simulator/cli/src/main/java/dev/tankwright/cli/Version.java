package dev.tankwright.cli;

import java.util.Objects;
import picocli.CommandLine;

/** The version of Tankwright, from the manifest of the runnable jar. */
final class Version implements CommandLine.IVersionProvider {
  /** The version, or {@code development} when run from class files. */
  static String text() {
    return Objects.requireNonNullElse(
        Version.class.getPackage().getImplementationVersion(), "development");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"tankwright " + text()};
  }
}
