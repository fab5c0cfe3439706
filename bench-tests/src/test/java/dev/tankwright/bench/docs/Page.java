package dev.tankwright.bench.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One Markdown page of the repository.
 *
 * @param name path below the root
 * @param text the whole page
 */
public record Page(String name, String text) {
  private static final String CODE = "`";

  /** The repository's root; the build names it to its tests. */
  public static Path root() {
    String root = System.getProperty("tankwright.root");
    if (root == null) {
      throw new IllegalStateException(
          "the system property tankwright.root is not set; run the tests with Maven");
    }
    return Path.of(root);
  }

  public static Page read(String name) {
    try {
      return new Page(name, Files.readString(root().resolve(name), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(name + " cannot be read", e);
    }
  }

  /** The part under a heading of the second level, up to the next one. */
  public Page section(String heading) {
    String line = "\n## " + heading + "\n";
    int start = text.indexOf(line);
    if (start < 0) {
      throw new AssertionError(name + " has no heading '## " + heading + "'");
    }
    int end = text.indexOf("\n## ", start + line.length());
    String body = text.substring(start + line.length(), end < 0 ? text.length() : end);
    return new Page(name + ", " + heading, body);
  }

  /** Content of every fenced block in a language, without the fences. */
  public List<String> fences(String language) {
    String open = "```" + language + "\n";
    List<String> found = new ArrayList<>();
    int at = text.indexOf(open);
    while (at >= 0) {
      int end = text.indexOf("```", at + open.length());
      found.add(text.substring(at + open.length(), end));
      at = text.indexOf(open, end + 3);
    }
    return found;
  }

  /** Cells of every table row but the heads, in the order of the page. */
  public List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    String[] lines = text.split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      boolean isHead = i + 1 < lines.length && isRule(lines[i + 1]);
      if (lines[i].startsWith("|") && !isRule(lines[i]) && !isHead) {
        rows.add(cells(lines[i]));
      }
    }
    return rows;
  }

  private static boolean isRule(String line) {
    return line.startsWith("|") && line.matches("[|: -]+");
  }

  private static List<String> cells(String line) {
    String inner = line.strip().replaceAll("^\\||\\|$", "");
    return Arrays.stream(inner.split("\\|", -1)).map(String::strip).toList();
  }

  /** A cell without the marks of code. */
  static String plain(String cell) {
    return cell.replace(CODE, "");
  }
}
