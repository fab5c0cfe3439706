package dev.tankwright.report.files;

import dev.tankwright.checksum.Sha256;
import dev.tankwright.report.text.Columns;
import dev.tankwright.report.text.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What became of a folder's files since their checksums were listed. Immutable.
 *
 * @param same how many files are as they were listed
 * @param altered files whose checksum is another one now, with both
 * @param missing files that are listed and not there
 * @param unlisted files that are there and not listed; the list says nothing about them
 */
public record ManifestCheck(
    int same, List<String> altered, List<String> missing, List<String> unlisted) {
  /** Keeps its own copies. */
  public ManifestCheck {
    altered = List.copyOf(altered);
    missing = List.copyOf(missing);
    unlisted = List.copyOf(unlisted);
  }

  /**
   * Computes every checksum of a folder's list again.
   *
   * @throws UnreadableException when there is no list, or none that can be read
   */
  public static ManifestCheck of(Path folder) throws UnreadableException {
    Manifest manifest = Manifest.read(folder);
    int same = 0;
    List<String> altered = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (Map.Entry<String, String> entry : manifest.sums().entrySet()) {
      Path file = folder.resolve(entry.getKey());
      if (!Files.isRegularFile(file)) {
        missing.add(entry.getKey());
        continue;
      }
      String now = sum(file);
      if (now.equals(entry.getValue())) {
        same++;
      } else {
        altered.add(entry.getKey() + ": listed " + entry.getValue() + ", now " + now);
      }
    }
    return new ManifestCheck(same, altered, missing, unlisted(folder, manifest));
  }

  private static String sum(Path file) throws UnreadableException {
    try {
      return Sha256.of(file);
    } catch (IOException e) {
      throw new UnreadableException(file + ": cannot be read (" + e + ")");
    }
  }

  private static List<String> unlisted(Path folder, Manifest manifest) {
    try (Stream<Path> tree = Files.walk(folder)) {
      return tree.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .filter(path -> !path.equals(Manifest.NAME) && !path.endsWith("/" + Manifest.NAME))
          .filter(path -> !manifest.sums().containsKey(path))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(folder + " cannot be listed", e);
    }
  }

  /** True when every listed file is there and as it was. */
  public boolean isIntact() {
    return altered.isEmpty() && missing.isEmpty();
  }

  /** One line for each file that is not as listed, and one that sums up. */
  public String text() {
    StringBuilder out = new StringBuilder();
    altered.forEach(each -> out.append("ALTERED   ").append(Columns.clean(each)).append('\n'));
    missing.forEach(each -> out.append("MISSING   ").append(Columns.clean(each)).append('\n'));
    unlisted.forEach(each -> out.append("unlisted  ").append(Columns.clean(each)).append('\n'));
    int listed = same + altered.size() + missing.size();
    out.append(Words.count(listed, "file")).append(" listed, ").append(same).append(" unaltered");
    if (!isIntact()) {
      out.append(", ").append(altered.size()).append(" altered");
      out.append(", ").append(missing.size()).append(" missing");
    }
    return out.append(".\n").toString();
  }
}
