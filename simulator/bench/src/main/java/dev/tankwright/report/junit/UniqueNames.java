package dev.tankwright.report.junit;

import java.util.Set;

/** Keeps names apart. */
final class UniqueNames {
  private UniqueNames() {}

  /** What must follow the name so that it is not in the set yet; the result joins the set. */
  static String suffix(String name, Set<String> taken) {
    String suffix = "";
    for (int number = 2; !taken.add(name + suffix); number++) {
      suffix = " (" + number + ")";
    }
    return suffix;
  }
}
