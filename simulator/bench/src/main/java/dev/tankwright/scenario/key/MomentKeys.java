package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import java.util.Arrays;
import java.util.List;

/** Keys of a timeline's entry that say when it is due, and how it is repeated. */
public final class MomentKeys {
  /** The group of keys of which an entry has just one. */
  public static final String MOMENT = "moment";

  /** More times would drown every report. */
  public static final long MOST_TIMES = 10_000;

  private static final KeyType.Quantity TIME = KeyType.time(0, Scenario.LONGEST_MILLIS);
  private static final KeyType.Line LINE = new KeyType.Line(120);
  private static final String EVERY_HINT = "; for example 'every: 2 min'";

  /** Name of the entry. */
  public static final Key NAME =
      key(
              "name",
              LINE,
              Origin.OURS,
              "name by which other entries and [variants](#variants) refer to this entry; unique in"
                  + " the timeline")
          .make();

  /** A moment of the run. */
  public static final Key AT =
      key("at", TIME, Origin.OURS, "at that time of the run, independent of other entries")
          .oneOf(MOMENT)
          .make();

  /** A phase. */
  public static final Key ON =
      key(
              "on",
              new KeyType.Words(Arrays.stream(Phase.values()).map(Enum::name).toList(), "a phase"),
              Origin.OURS,
              "in the first step in which the phase is entered after the previous entry was"
                  + " performed; a phase entered before does not count")
          .oneOf(MOMENT)
          .make();

  /** A condition. */
  public static final Key WHEN =
      key(
              "when",
              new KeyType.ConditionText(),
              Origin.OURS,
              "in the first step in which the [condition](#conditions) becomes true after the"
                  + " previous entry was performed; a condition that is already true does not count"
                  + " until it has been false. In the first step of the run it becomes true")
          .oneOf(MOMENT)
          .make();

  /** A time after phase or condition. */
  public static final Key AFTER =
      key(
              "after",
              TIME,
              Origin.OURS,
              "that much later than the phase or the condition, even if the phase is left or the"
                  + " condition is false again meanwhile")
          .otherwise("0 s")
          .with("on", "when")
          .hint("; for a time after the entry before write 'later'")
          .make();

  /** A time after another entry. */
  public static final Key LATER =
      key("later", TIME, Origin.OURS, "that long after the previous entry was performed")
          .oneOf(MOMENT)
          .formerly("then")
          .make();

  /** Which entry is waited for. */
  public static final Key FROM =
      key(
              "from",
              LINE,
              Origin.OURS,
              "waits for the entry of that name instead of the previous one; it must be earlier in"
                  + " the list. `start` waits for none and counts from the start of the run")
          .with("on", "when", "later")
          .make();

  /** How often. */
  public static final Key EVERY =
      key(
              "every",
              KeyType.time(Repeat.SHORTEST_MILLIS, Scenario.LONGEST_MILLIS),
              Origin.OURS,
              "the entry is repeated with this period, counted from when it was first due")
          .make();

  /** How many times. */
  public static final Key TIMES =
      key("times", new KeyType.Whole(1, MOST_TIMES), Origin.OURS, "total number of times")
          .with("every")
          .hint(EVERY_HINT)
          .make();

  /** Until when. */
  public static final Key UNTIL =
      key("until", TIME, Origin.OURS, "the latest moment of the run at which it is due")
          .with("every")
          .hint(EVERY_HINT)
          .make();

  /** All of them. */
  public static final KeyBlock BLOCK =
      new KeyBlock(
          "this timeline entry",
          List.of(NAME, AT, ON, WHEN, AFTER, LATER, FROM, EVERY, TIMES, UNTIL));

  private MomentKeys() {}
}
