package dev.tankwright.report;

import java.util.Set;

/** Keeps names apart. */
final class Unique {
  private Unique() {}

  /** What must follow the name so that it is not in the set yet; the result joins the set. */
  static String suffix(String name, Set<String> taken) {
    String suffix = "";
    for (int number = 2; !taken.add(name + suffix); number++) {
      suffix = " (" + number + ")";
    }
    return suffix;
  }
}
