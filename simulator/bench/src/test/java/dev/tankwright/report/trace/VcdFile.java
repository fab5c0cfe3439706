package dev.tankwright.report.trace;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A reader of value change dumps by the grammar of IEEE 1364-2005, 18.2 (from memory of the
 * clause), that knows nothing of the writer. What the grammar does not allow is an {@link
 * AssertionError}.
 */
final class VcdFile {
  private static final Set<String> SCOPES = Set.of("begin", "fork", "function", "module", "task");
  private static final Set<String> UNITS = Set.of("s", "ms", "us", "ns", "ps", "fs");
  private static final String IDENTIFIER = "[A-Za-z_][A-Za-z0-9_$]*";
  private static final String REAL = "[-+]?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?";

  /**
   * A declared variable.
   *
   * @param path scopes and name, joined by points
   * @param type {@code real} or {@code wire}
   * @param bits its size
   */
  record Variable(String path, String type, int bits) {}

  final Map<String, Variable> byCode = new LinkedHashMap<>();
  final Map<String, String> sections = new HashMap<>();
  final List<String> comments = new ArrayList<>();

  /** Values by path at every time, in the order of time. */
  final Map<Long, Map<String, String>> at = new LinkedHashMap<>();

  private final Map<String, String> now = new LinkedHashMap<>();
  private final Deque<String> scopes = new ArrayDeque<>();
  private final String[] words;
  private int next;

  VcdFile(String text) {
    if (!text.matches("[\\n -~]*")) {
      throw new AssertionError("not printable ASCII");
    }
    words = text.strip().split("\\s+", -1);
    while (declaration()) {}
    changes();
  }

  private String word() {
    return words[next++];
  }

  private static void check(boolean holds, String what) {
    if (!holds) {
      throw new AssertionError(what);
    }
  }

  private String toEnd() {
    List<String> body = new ArrayList<>();
    for (String word = word(); !word.equals("$end"); word = word()) {
      check(!word.matches("[$][a-z]+"), "a keyword inside a section: " + word);
      body.add(word);
    }
    return String.join(" ", body);
  }

  /** True while there are more. */
  private boolean declaration() {
    String keyword = word();
    String body = toEnd();
    switch (keyword) {
      case "$date", "$version" -> sections.put(keyword, body);
      case "$comment" -> comments.add(body);
      case "$timescale" -> {
        String[] parts = body.split(" ", -1);
        check(Set.of("1", "10", "100").contains(parts[0]) && UNITS.contains(parts[1]), body);
        sections.put(keyword, body);
      }
      case "$scope" -> {
        String[] parts = body.split(" ", -1);
        check(SCOPES.contains(parts[0]) && parts[1].matches(IDENTIFIER), body);
        scopes.addLast(parts[1]);
      }
      case "$upscope" -> check(body.isEmpty() && scopes.pollLast() != null, "upscope");
      case "$var" -> variable(body.split(" ", -1));
      case "$enddefinitions" -> {
        check(body.isEmpty() && scopes.isEmpty(), "a scope is left open");
        return false;
      }
      default -> throw new AssertionError("no declaration: " + keyword);
    }
    return true;
  }

  private void variable(String[] parts) {
    int bits = Integer.parseInt(parts[1]);
    check(Set.of("real", "wire").contains(parts[0]) && bits > 0, "type and size");
    check(parts[2].matches("[!-~]+") && parts[3].matches(IDENTIFIER), "code and name");
    check(parts.length == 4 || parts[4].equals("[" + (bits - 1) + ":0]"), "range");
    String path = String.join(".", scopes) + "." + parts[3];
    check(byCode.values().stream().noneMatch(v -> v.path().equals(path)), "twice: " + path);
    check(byCode.put(parts[2], new Variable(path, parts[0], bits)) == null, "code used twice");
  }

  private void changes() {
    long time = -1;
    boolean dumping = false;
    while (next < words.length) {
      String word = word();
      switch (word.charAt(0)) {
        case '#' -> {
          long later = Long.parseLong(word.substring(1));
          check(later > time, "time goes back");
          time = later;
          at.put(time, Map.of());
        }
        case '$' -> {
          check(word.equals(dumping ? "$end" : "$dumpvars"), word);
          check(!dumping || now.size() == byCode.size(), "dumpvars leaves one out");
          dumping = !dumping;
        }
        default -> change(word);
      }
      at.put(time, Map.copyOf(now));
    }
    check(!dumping, "dumpvars is left open");
  }

  private void change(String word) {
    char kind = word.charAt(0);
    boolean scalar = kind == '0' || kind == '1';
    String code = scalar ? word.substring(1) : word();
    Variable variable = byCode.get(code);
    check(variable != null, "not declared: " + code);
    String value = scalar ? String.valueOf(kind) : word.substring(1);
    if (variable.type().equals("real")) {
      check(kind == 'r' && value.matches(REAL), "no real: " + word);
    } else {
      check(scalar ? variable.bits() == 1 : kind == 'b', "no wire: " + word);
      check(value.matches("[01]+") && value.length() <= variable.bits(), "bits: " + word);
    }
    now.put(variable.path(), value);
  }
}
