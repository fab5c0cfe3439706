package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import java.util.List;

/** Keys of a requirement. */
public final class RequirementKeys {
  /** The group of keys of which a requirement has just one. */
  public static final String KIND = "kind";

  private static final KeyType CONDITION = new KeyType.ConditionText();
  private static final KeyType.Whole TIMES = new KeyType.Whole(0, 9_999_999);

  /** Its name. */
  public static final Key NAME =
      key("name", new KeyType.Line(120), Origin.OURS, "unique in the file")
          .required("The cycle completes")
          .make();

  /** The safety requirement. */
  public static final Key ID =
      key(
              "id",
              new KeyType.Form("SR-[0-9]{2}", "SR- and two digits"),
              Origin.OURS,
              "the row of [safety.md](safety.md) that it shows")
          .example("SR-01")
          .make();

  /** What holds always. */
  public static final Key ALWAYS =
      key("always", CONDITION, Origin.TRADE, "holds in every step").oneOf(KIND).make();

  /** What holds never. */
  public static final Key NEVER =
      key("never", CONDITION, Origin.TRADE, "holds in no step").oneOf(KIND).make();

  /** The situation that counts. */
  public static final Key WHILE =
      key("while", CONDITION, Origin.OURS, "only steps in which this holds count")
          .with("always", "never")
          .make();

  /** The longest reaction. */
  public static final Key WITHIN =
      key(
              "within",
              KeyType.time(0, Scenario.LONGEST_MILLIS).upTo("the run's duration"),
              Origin.TRADE,
              "longest time from `after` to `holds`")
          .oneOf(KIND)
          .needs("after", "holds")
          .make();

  /** The trigger. */
  public static final Key AFTER =
      key("after", CONDITION, Origin.OURS, "the trigger: the step in which this becomes true")
          .example("lid-open")
          .with("within", "stays", "until")
          .make();

  /** What must hold. */
  public static final Key HOLDS =
      key("holds", CONDITION, Origin.OURS, "what must hold")
          .example("not ultrasound")
          .with("within", "until")
          .make();

  /** What holds some time. */
  public static final Key EVENTUALLY =
      key("eventually", CONDITION, Origin.TRADE, "holds in some step").oneOf(KIND).make();

  /** Until when. */
  public static final Key BEFORE =
      key(
              "before",
              KeyType.time(1, Scenario.LONGEST_MILLIS).upTo("the run's duration"),
              Origin.OURS,
              "latest moment of the run at which it first holds; default: the run's end")
          .with("eventually")
          .make();

  /** What stays true. */
  public static final Key STAYS =
      key("stays", CONDITION, Origin.OURS, "stays true for a time").oneOf(KIND).needs("for").make();

  /** For how long. */
  public static final Key FOR =
      key(
              "for",
              KeyType.time(1, Scenario.LONGEST_MILLIS).upTo("the run's duration"),
              Origin.OURS,
              "minimum time that it stays true")
          .example("30 s")
          .with("stays")
          .make();

  /** What ends it. */
  public static final Key UNTIL =
      key("until", CONDITION, Origin.TRADE, "up to which `holds` must hold")
          .oneOf(KIND)
          .needs("holds")
          .make();

  /** What is counted. */
  public static final Key COUNT =
      key("count", CONDITION, Origin.OURS, "counts how often it becomes true; with bounds")
          .oneOf(KIND)
          .make();

  /** The fewest. */
  public static final Key AT_LEAST =
      key("at-least", TIMES, Origin.OURS, "minimum count").with("count").make();

  /** The most. */
  public static final Key AT_MOST =
      key("at-most", TIMES, Origin.OURS, "maximum count").example("3").with("count").make();

  /** All of them. */
  public static final KeyBlock BLOCK =
      new KeyBlock(
          "this requirement",
          List.of(
              NAME,
              ID,
              ALWAYS,
              NEVER,
              WHILE,
              WITHIN,
              AFTER,
              HOLDS,
              EVENTUALLY,
              BEFORE,
              STAYS,
              FOR,
              UNTIL,
              COUNT,
              AT_LEAST,
              AT_MOST));

  private RequirementKeys() {}
}
