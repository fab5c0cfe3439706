package dev.tankwright.bench.docs;

import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.key.BathKeys;
import dev.tankwright.scenario.key.FileKeys;
import dev.tankwright.scenario.key.MomentKeys;
import dev.tankwright.scenario.key.RequirementKeys;
import dev.tankwright.scenario.key.StockKeys;
import dev.tankwright.scenario.profile.ProfileKeys;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The tables of keys in the reference of scenario files, made from the table of keys. Each stands
 * under a comment that names it, as in {@code <!-- keys: bath -->}.
 */
final class KeyTables {
  private static final String MARK = "<!-- keys: ";
  private static final String END = " -->";

  private KeyTables() {}

  /** The page with its tables as they should be. */
  static String refreshed(String page) {
    Map<String, String> tables = tables();
    List<String> lines = new ArrayList<>();
    boolean replaced = false;
    for (String line : page.split("\n", -1)) {
      if (line.startsWith(MARK)) {
        String name = line.substring(MARK.length(), line.length() - END.length());
        lines.add(line);
        lines.add("");
        lines.add(tables.remove(name));
        replaced = true;
      } else if (!replaced || !(line.isEmpty() || line.startsWith("|"))) {
        if (replaced) {
          lines.add("");
        }
        lines.add(line);
        replaced = false;
      }
    }
    if (!tables.isEmpty()) {
      throw new AssertionError("the page lacks the tables " + tables.keySet());
    }
    return String.join("\n", lines);
  }

  private static Map<String, String> tables() {
    Map<String, String> tables = new LinkedHashMap<>();
    tables.put("file", required(FileKeys.BLOCK));
    tables.put("bath", required(BathKeys.BLOCK));
    tables.put("solution", required(StockKeys.SOLUTION));
    tables.put("load", required(StockKeys.LOAD));
    tables.put("profile", ranges(ProfileKeys.BLOCK));
    tables.put("moments", companions(MomentKeys.BLOCK));
    tables.put("actions", companions(ActionKeys.BLOCK));
    tables.put("requirement", companions(RequirementKeys.BLOCK));
    return tables;
  }

  private static String required(KeyBlock block) {
    return table(
        block,
        List.of("Key", "Required; default", "Value", "Meaning"),
        key ->
            List.of(key.required() ? "yes" : "no" + otherwise(key), key.type().told(), key.help()));
  }

  private static String ranges(KeyBlock block) {
    return table(
        block,
        List.of("Key", "Valid; default", "Meaning"),
        key -> List.of(key.type().told() + otherwise(key), key.help()));
  }

  private static String companions(KeyBlock block) {
    return table(
        block,
        List.of("Key", "Value; default", "Goes with", "Meaning"),
        key -> List.of(key.type().told() + otherwise(key), with(key), key.help()));
  }

  private static String table(
      KeyBlock block, List<String> head, Function<Key, List<String>> cells) {
    StringJoiner lines = new StringJoiner("\n");
    lines.add("| " + String.join(" | ", head) + " |");
    lines.add("| --- ".repeat(head.size()) + "|");
    for (Key key : block.keys()) {
      String rest =
          cells.apply(key).stream()
              .map(cell -> cell.isEmpty() ? " |" : " " + cell + " |")
              .collect(Collectors.joining());
      lines.add("| `" + key.name() + "` |" + rest);
    }
    return lines.toString();
  }

  private static String otherwise(Key key) {
    return key.standard().isEmpty() ? "" : "; `" + key.standard() + "`";
  }

  private static String with(Key key) {
    String companions =
        key.companions().stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
    String needs =
        key.needs().stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
    return needs.isEmpty() ? companions : companions + "needs " + needs;
  }
}
