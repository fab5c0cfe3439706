package dev.tankwright.scenario.key;

import java.util.List;

/**
 * The keys of a scenario file by the block in which they may stand. The readers refuse every other
 * one.
 */
public final class ScenarioKeys {
  /** Of the file as a whole. */
  public static final List<String> FILE =
      List.of(
          "scenario",
          "extends",
          "purpose",
          "device",
          "clock",
          "seed",
          "duration",
          "profile",
          "bath",
          "solution",
          "load",
          "controller",
          "timeline",
          "requirements");

  /** Under {@code bath}. */
  public static final List<String> BATH =
      List.of(
          "fill",
          "temperature",
          "ambient",
          "humidity",
          "dissolved-gas",
          "detergent",
          "load",
          "overlap");

  /** Under {@code solution}. */
  public static final List<String> SOLUTION =
      List.of("chemistry", "chemistry-maximum", "lot", "dissolved-gas", "detergent");

  /** Under {@code load}. */
  public static final List<String> LOAD = List.of("mass", "overlap", "kind");

  /** Of an entry of {@code timeline}. */
  public static final List<String> ENTRY =
      List.of(
          "name",
          "at",
          "on",
          "when",
          "after",
          "then",
          "from",
          "every",
          "times",
          "until",
          "command",
          "programme",
          "setpoint",
          "degas",
          "clean",
          "chemistry",
          "chemistry-maximum",
          "operator",
          "load",
          "foil",
          "basket",
          "cut-power",
          "set-clock",
          "lid",
          "break",
          "size",
          "for",
          "mend",
          "force",
          "release",
          "fill",
          "temperature",
          "detergent");

  /** Of an entry of {@code requirements}. */
  public static final List<String> REQUIREMENT =
      List.of(
          "name",
          "id",
          "always",
          "never",
          "while",
          "within",
          "after",
          "holds",
          "eventually",
          "before",
          "stays",
          "for",
          "until",
          "count",
          "at-least",
          "at-most");

  private ScenarioKeys() {}
}
