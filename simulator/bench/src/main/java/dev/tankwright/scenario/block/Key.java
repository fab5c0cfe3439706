package dev.tankwright.scenario.block;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * One key of a file, with all that is known of it. Immutable.
 *
 * @param name as files write it
 * @param type what its value is
 * @param origin where the name comes from
 * @param help what it says, as the beginning of a sentence; range and default follow by themselves
 * @param since the version that brought it
 * @param former what it was called before; read for one version, with a warning
 * @param required whether its block is wrong without it
 * @param example a value, for messages; empty where none is needed
 * @param standard its value where it is absent, as a file would write it; empty for none
 * @param group what it is one of, where a block takes just one key of a group; empty for none
 * @param companions keys of which at least one must stand beside it, {@code key} or {@code key:
 *     word}; empty for none
 * @param hint what follows on the message about missing companions
 * @param needs keys that must stand beside it
 */
public record Key(
    String name,
    KeyType type,
    Origin origin,
    String help,
    String since,
    List<String> former,
    boolean required,
    String example,
    String standard,
    String group,
    List<String> companions,
    String hint,
    List<String> needs) {

  private static final Pattern LINK = Pattern.compile("\\[([^]]+)]\\([^)]+\\)");

  /** The version that brought every key of which nothing else is said. */
  public static final String FIRST = "0.1.0";

  /** Keeps its own copies. */
  public Key {
    former = List.copyOf(former);
    companions = List.copyOf(companions);
    needs = List.copyOf(needs);
  }

  /** A key of which nothing is known but its name. */
  static Key plain(String name) {
    return KeyBuilder.key(name, new KeyType.Special(""), Origin.OURS, "").make();
  }

  /** The key with its example as a file writes both. */
  public String written() {
    return name + ": " + example;
  }

  /** What it says, its range and its default, without the marks of a page: for editors. */
  public String described() {
    String text = help.substring(0, 1).toUpperCase(Locale.ROOT) + help.substring(1);
    String value = standard.isEmpty() ? type.told() : type.told() + "; default " + standard;
    String more = value.isEmpty() ? "" : " (" + value + ")";
    return LINK.matcher(text + more).replaceAll("$1").replace("`", "");
  }
}
