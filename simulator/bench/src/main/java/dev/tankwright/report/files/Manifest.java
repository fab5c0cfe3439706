package dev.tankwright.report.files;

import dev.tankwright.checksum.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/**
 * A list of files with their SHA-256 checksums, in the form that the {@code sha256sum} of the GNU
 * core utilities writes and checks: the checksum, two spaces, the path below the list's own folder
 * with slashes. A name with a backslash or a line break has these escaped and its line begins with
 * a backslash. Whoever signs this one file signs them all.
 *
 * @param sums checksums by path, sorted by path
 */
public record Manifest(Map<String, String> sums) {
  /** Name of the list in a folder of results. */
  public static final String NAME = "SHA256SUMS";

  public Manifest {
    sums = new TreeMap<>(sums);
  }

  /**
   * Computes the checksums of files.
   *
   * @param paths below the folder, with slashes
   * @throws IOException when a file cannot be read
   */
  public static Manifest of(Path folder, Collection<String> paths) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    for (String path : paths) {
      sums.put(path, Sha256.of(folder.resolve(path)));
    }
    return new Manifest(sums);
  }

  /** The list, UTF-8. */
  public byte[] document() {
    StringBuilder out = new StringBuilder(128 * sums.size());
    sums.forEach(
        (path, sum) -> {
          String escaped = path.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
          out.append(escaped.equals(path) ? "" : "\\").append(sum).append("  ");
          out.append(escaped).append('\n');
        });
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Reads the list of a folder.
   *
   * @throws UnreadableException when there is none, when a line is no line of such a list, or when
   *     a path is outside the folder
   */
  static Manifest read(Path folder) throws UnreadableException {
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file)) {
      throw new UnreadableException(
          file + ": this list does not exist; 'tankwright report " + folder + "' writes one");
    }
    Map<String, String> sums = new TreeMap<>();
    int number = 0;
    for (String line : text(file).lines().toList()) {
      number++;
      String place = file + ", line " + number;
      String path = path(folder, line, place);
      if (sums.put(path, line.substring(line.startsWith("\\") ? 1 : 0).substring(0, 64)) != null) {
        throw new UnreadableException(place + ": " + path + " is listed twice");
      }
    }
    if (sums.isEmpty()) {
      throw new UnreadableException(file + ": the list is empty; create it again");
    }
    return new Manifest(sums);
  }

  private static String text(Path file) throws UnreadableException {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UnreadableException(file + ": the list cannot be read (" + e + ")");
    }
  }

  private static String path(Path folder, String line, String place) throws UnreadableException {
    if (!line.matches("\\\\?[0-9a-f]{64} [ *].+")) {
      throw new UnreadableException(
          place + ": not a checksum, two spaces and a path; the list is incomplete or damaged");
    }
    String path = line.substring(line.startsWith("\\") ? 67 : 66);
    if (line.startsWith("\\")) {
      path = unescaped(path);
    }
    Path root = folder.toAbsolutePath().normalize();
    if (path.indexOf('\0') >= 0 || !root.resolve(path).normalize().startsWith(root)) {
      throw new UnreadableException(place + ": " + path + " is outside the folder");
    }
    return path;
  }

  private static String unescaped(String path) {
    StringBuilder out = new StringBuilder(path.length());
    for (int i = 0; i < path.length(); i++) {
      char c = path.charAt(i);
      if (c == '\\' && i + 1 < path.length()) {
        i++;
        c = path.charAt(i) == 'n' ? '\n' : path.charAt(i) == 'r' ? '\r' : path.charAt(i);
      }
      out.append(c);
    }
    return out.toString();
  }
}
