package dev.tankwright.scenario.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says what would be right where the YAML parser says what is wrong. */
final class YamlAdvice {
  private static final Map<String, String> ADVICE = new LinkedHashMap<>();

  static {
    ADVICE.put(
        "mapping values are not allowed",
        "put a text that has a colon and a space in it in quotes, or indent the key under its"
            + " parent");
    ADVICE.put("could not find expected ':'", "write 'key: value', with a colon after the key");
    ADVICE.put("but found '-'", "indent this list like the items before it");
    ADVICE.put("expected <block end>", "give this line the same indentation as its neighbours");
    ADVICE.put("end of stream", "close the quotes that open here");
    ADVICE.put("escape", "write the text without backslashes, or in single quotes");
    ADVICE.put("cannot start any token", "put a text that begins like this in quotes");
    ADVICE.put("sequence entries are not allowed", "begin the list on a line of its own");
    ADVICE.put("',' or '", "close the bracket that opens here, or put commas between its items");
    ADVICE.put("anchor", "anchors and aliases are not used here; put the text in quotes");
    ADVICE.put("alias", "anchors and aliases are not used here; put the text in quotes");
  }

  /** Problems that the parser meets long after the place that a person has to fix. */
  private static final List<String> BEGUN_EARLIER =
      List.of("could not find expected ':'", "end of stream", "',' or '");

  private YamlAdvice() {}

  /** True when the problem is fixed where its piece of YAML begins, not where it was met. */
  static boolean isBegunEarlier(String problem) {
    return problem != null && BEGUN_EARLIER.stream().anyMatch(problem::contains);
  }

  static String of(String problem) {
    String cause = problem == null ? "unreadable" : problem.replaceAll("\\s+", " ").strip();
    for (Map.Entry<String, String> advice : ADVICE.entrySet()) {
      if (cause.contains(advice.getKey())) {
        return "this is not valid YAML (" + cause + "); " + advice.getValue();
      }
    }
    return "this is not valid YAML (" + cause + "); write 'key: value' lines and '- ' lists";
  }
}
