package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The head of a result file: what was run, one thing a line. */
final class HeadLines {
  /** The first field of the first line, and its second: the version of this way of writing. */
  static final String MAGIC = "tankwright-campaign-results";

  static final String FORMAT = "1";

  /** The first field of the head's last line. */
  static final String END = "begin";

  private HeadLines() {}

  /** The whole head. */
  static String of(About about) {
    StringBuilder head = new StringBuilder(4000);
    line(head, List.of(MAGIC, FORMAT));
    line(head, List.of("title", about.title()));
    line(head, List.of("purpose", about.purpose()));
    line(head, List.of("file", about.file()));
    line(head, List.of("sha256", about.sha256()));
    line(head, List.of("version", about.version()));
    line(head, list("profiles", about.profiles()));
    line(head, list("scenarios", about.scenarios()));
    line(head, list("faults", about.faults()));
    line(head, list("phases", about.phases().stream().map(Phase::name).toList()));
    for (Required required : about.requirements()) {
      line(head, List.of("requirement", required.name(), required.id(), required.statement()));
    }
    line(head, List.of("seed", Long.toString(about.seed())));
    line(head, List.of("cases", Integer.toString(about.cases())));
    line(head, List.of("shard", about.shard().toString()));
    line(head, List.of(END));
    return head.toString();
  }

  private static void line(StringBuilder head, List<String> fields) {
    head.append(ResultLine.of(fields));
  }

  private static List<String> list(String key, List<String> values) {
    List<String> fields = new ArrayList<>(List.of(key));
    fields.addAll(values);
    return fields;
  }

  /**
   * What the lines of a head say, without the first and the last.
   *
   * @throws IllegalArgumentException when something is missing or makes no sense
   */
  static About read(List<List<String>> lines) {
    Map<String, List<String>> byKey = new LinkedHashMap<>();
    List<Required> requirements = new ArrayList<>();
    for (List<String> line : lines) {
      if (line.get(0).equals("requirement") && line.size() == 4) {
        requirements.add(new Required(line.get(1), line.get(2), line.get(3)));
      } else {
        byKey.put(line.get(0), line.subList(1, line.size()));
      }
    }
    return new About(
        one(byKey, "title"),
        one(byKey, "purpose"),
        one(byKey, "file"),
        one(byKey, "sha256"),
        one(byKey, "version"),
        all(byKey, "profiles"),
        all(byKey, "scenarios"),
        all(byKey, "faults"),
        all(byKey, "phases").stream().map(Phase::valueOf).toList(),
        requirements,
        Long.parseLong(one(byKey, "seed")),
        Integer.parseInt(one(byKey, "cases")),
        Shard.parse(one(byKey, "shard")).orElseThrow(IllegalArgumentException::new));
  }

  private static List<String> all(Map<String, List<String>> byKey, String key) {
    List<String> values = byKey.get(key);
    if (values == null || values.isEmpty()) {
      throw new IllegalArgumentException("the header lacks " + key);
    }
    return values;
  }

  private static String one(Map<String, List<String>> byKey, String key) {
    return all(byKey, key).get(0);
  }
}
