package dev.tankwright.bench.cli;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** The quick campaign, run by the packaged jar once for all tests that look at what it leaves. */
final class QuickCampaign {
  static final Path FILE = Tool.root().resolve("bench-tests/campaigns/single-faults-quick.yaml");

  private static Path folder;
  private static Tool.Result result;

  private QuickCampaign() {}

  /** The folder with its results; nobody may write there. */
  static synchronized Path whole() throws IOException, InterruptedException {
    if (folder == null) {
      Path target = Tool.root().resolve("bench-tests/target");
      Path place = Files.createTempDirectory(Files.createDirectories(target), "quick-campaign");
      String out = place.resolve("whole").toString();
      result = Tool.runJar(place, "campaign", FILE.toString(), "--out", out, "--threads", "3");
      folder = place.resolve("whole");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(place)));
    }
    return folder;
  }

  private static void remove(Path place) {
    try (Stream<Path> files = Files.walk(place)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What it printed, and its exit code. */
  static Tool.Result result() throws IOException, InterruptedException {
    whole();
    return result;
  }
}
