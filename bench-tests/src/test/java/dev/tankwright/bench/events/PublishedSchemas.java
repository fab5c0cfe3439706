package dev.tankwright.bench.events;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Compares a folder of schemas with its list of what was published, as sha256sum writes it. */
final class PublishedSchemas {
  private static final String LIST = "published.sha256";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) {2}(\\S+)");
  private static final Pattern VERSION = Pattern.compile("\\.v([0-9]+)\\.json$");

  private PublishedSchemas() {}

  /** SHA-256 by file name of everything that was published. */
  static Map<String, String> listed(Path folder) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    for (String line : Files.readAllLines(folder.resolve(LIST))) {
      Matcher parts = LINE.matcher(line);
      if (!parts.matches()) {
        throw new IllegalStateException(
            LIST + " has the line '" + line + "'; it must be a sum, two spaces and a file name");
      }
      sums.put(parts.group(2), parts.group(1));
    }
    return sums;
  }

  /** What is wrong, in words that say what would be right; empty when nothing is. */
  static List<String> wrong(Path folder) throws IOException {
    Map<String, String> published = listed(folder);
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, String> schema : published.entrySet()) {
      Path file = folder.resolve(schema.getKey());
      if (!Files.exists(file)) {
        wrong.add(schema.getKey() + " was published and is gone; put it back as it was");
      } else if (!sum(file).equals(schema.getValue())) {
        wrong.add(
            schema.getKey()
                + " was published and has changed; put it back as it was, and make the change in "
                + next(schema.getKey())
                + ", with a new type beside the old one");
      }
    }
    for (Path file : schemas(folder)) {
      String name = file.getFileName().toString();
      if (!published.containsKey(name)) {
        wrong.add(
            name
                + " is not in "
                + LIST
                + "; once its content is settled, add the line "
                + sum(file)
                + "  "
                + name);
      }
    }
    return wrong;
  }

  private static List<Path> schemas(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static String next(String name) {
    Matcher version = VERSION.matcher(name);
    if (!version.find()) {
      return "a file whose name ends with a version";
    }
    return name.substring(0, version.start())
        + ".v"
        + (Integer.parseInt(version.group(1)) + 1)
        + ".json";
  }

  private static String sum(Path file) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(
          "this Java platform lacks SHA-256, which every one must have", e);
    }
  }
}
