package dev.tankwright.bench.extent;

import dev.tankwright.extent.LeftOut;
import dev.tankwright.extent.LeftOut.Why;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Prints at the end of a build what it has left out, a line for each reason. */
public final class LeftOutMain {
  private LeftOutMain() {}

  /**
   * Prints the lines and writes {@code left-out.txt}, which names every test.
   *
   * @param args the moment at which the build began; the folder to write to; the modules of the
   *     reactor below {@code tankwright.root} are those that have a target
   */
  public static void main(String[] args) throws IOException {
    List<LeftOut> all = gather(Path.of(System.getProperty("tankwright.root")), args[0]);
    Path file = Files.createDirectories(Path.of(args[1])).resolve("left-out.txt");
    Files.write(file, names(all));
    lines(all).forEach(System.out::println);
    System.out.println(
        all.isEmpty() ? "[left out] nothing" : "[left out] every test by name: " + file);
  }

  /** What the virtual machines of every module have left out in one build. */
  static List<LeftOut> gather(Path root, String build) throws IOException {
    List<LeftOut> all = new ArrayList<>();
    for (Path folder : folders(root)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.sorted().toList()) {
          all.addAll(LeftOut.read(file, build));
        }
      }
    }
    return all.stream().distinct().toList();
  }

  private static List<Path> folders(Path root) throws IOException {
    try (Stream<Path> files =
        Files.find(root, 4, (file, facts) -> file.endsWith("target/left-out"))) {
      return files.filter(Files::isDirectory).sorted().toList();
    }
  }

  static List<String> lines(List<LeftOut> all) {
    List<String> lines = new ArrayList<>();
    long evidence = all.stream().filter(one -> one.why() == Why.EVIDENCE).count();
    if (evidence > 0) {
      lines.add(tests(evidence) + " of long evidence; run with -Pevidence");
    }
    String cases =
        all.stream()
            .filter(one -> one.why() == Why.CASES)
            .map(LeftOut::detail)
            .sorted()
            .collect(Collectors.joining(", "));
    if (!cases.isEmpty()) {
      lines.add("[left out] the other cases of " + cases + "; run with -Pevidence");
    }
    Map<String, Long> services =
        all.stream()
            .filter(one -> one.why() == Why.SERVICE)
            .collect(Collectors.groupingBy(LeftOut::detail, TreeMap::new, Collectors.counting()));
    services.forEach((why, count) -> lines.add(tests(count) + ", for " + why));
    return lines;
  }

  private static String tests(long count) {
    return "[left out] " + count + (count == 1 ? " test" : " tests");
  }

  private static List<String> names(List<LeftOut> all) {
    return all.stream()
        .map(one -> String.join("\t", one.why().name(), one.test(), one.detail()))
        .sorted()
        .toList();
  }
}
