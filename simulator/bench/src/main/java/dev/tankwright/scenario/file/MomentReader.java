package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.key.MomentKeys;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.Problems;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads when an entry of the timeline is due, and how it is repeated. */
final class MomentReader {
  private final long durationMillis;
  private final Problems problems;

  MomentReader(long durationMillis, Problems problems) {
    this.durationMillis = durationMillis;
    this.problems = problems;
  }

  /** The moment; {@code isFirst} when no entry stands before this one. */
  Optional<When> when(Fields fields, boolean isFirst) {
    List<String> given = fields.given(MomentKeys.MOMENT);
    fields.refuseLonely(List.of(MomentKeys.AFTER));
    if (given.size() != 1) {
      String text =
          given.isEmpty()
              ? "this entry has no moment; give it one of "
                  + String.join(", ", MomentKeys.BLOCK.group(MomentKeys.MOMENT))
              : "an entry has one moment, this one has " + String.join(" and ", given);
      problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
      return Optional.empty();
    }
    if (fields.has(MomentKeys.AT)) {
      return at(fields);
    } else if (fields.has(MomentKeys.ON)) {
      return on(fields);
    }
    return fields.has(MomentKeys.WHEN) ? crossing(fields) : later(fields, isFirst);
  }

  private static Optional<When> at(Fields fields) {
    fields.refuse(
        MomentKeys.FROM.name(), "does not go with 'at', which waits for no entry; write 'later'");
    return boxed(fields.steps(MomentKeys.AT)).map(When.At::new);
  }

  private Optional<When> on(Fields fields) {
    Optional<Phase> phase = fields.constant(MomentKeys.ON, List.of(Phase.values()));
    OptionalLong delay = delay(fields);
    return phase.isPresent() && delay.isPresent()
        ? Optional.of(new When.On(phase.get(), delay.getAsLong()))
        : Optional.empty();
  }

  private Optional<When> crossing(Fields fields) {
    Optional<Condition> condition = fields.condition(MomentKeys.WHEN);
    OptionalLong delay = delay(fields);
    return condition.isPresent() && delay.isPresent()
        ? Optional.of(new When.Crossing(condition.get(), delay.getAsLong()))
        : Optional.empty();
  }

  private OptionalLong delay(Fields fields) {
    if (!fields.has(MomentKeys.AFTER)) {
      return OptionalLong.of(0);
    }
    OptionalLong delay = fields.steps(MomentKeys.AFTER);
    if (delay.isPresent() && delay.getAsLong() == 0) {
      problems.remark(
          fields.keyPlace(MomentKeys.AFTER), "unused: no time passes in 0 s; leave it out");
    }
    return delay;
  }

  private static Optional<When> later(Fields fields, boolean isFirst) {
    if (isFirst && !fields.has(MomentKeys.FROM)) {
      fields.refuse(
          MomentKeys.LATER.name(),
          "has no entry before it to wait for; write 'at' in the first entry");
    }
    return boxed(fields.steps(MomentKeys.LATER)).map(When.Later::new);
  }

  /** How the entry is repeated, if it is; what is wrong is reported. */
  Optional<Repeat> repeat(Fields fields, Optional<When> when) {
    fields.refuseLonely(List.of(MomentKeys.TIMES, MomentKeys.UNTIL));
    if (!fields.has(MomentKeys.EVERY)) {
      return Optional.empty();
    }
    OptionalLong every = fields.steps(MomentKeys.EVERY);
    OptionalLong times = fields.whole(MomentKeys.TIMES);
    OptionalLong until = fields.steps(MomentKeys.UNTIL);
    boolean wrong = fields.has(MomentKeys.TIMES) && times.isEmpty();
    if (every.isEmpty() || wrong) {
      return Optional.empty();
    }
    if (times.isEmpty() && durationMillis / every.getAsLong() > MomentKeys.MOST_TIMES) {
      String many = "this would be done more than " + MomentKeys.MOST_TIMES + " times";
      problems.add(fields.keyPlace(MomentKeys.EVERY), many + "; give it 'times', or more time");
    }
    refuseEarly(fields, when, until);
    if (times.equals(OptionalLong.of(1))) {
      problems.remark(
          fields.keyPlace(MomentKeys.EVERY),
          "unused: what is done once is not repeated; give more 'times'");
    }
    return Optional.of(new Repeat(every.getAsLong(), times, until));
  }

  private void refuseEarly(Fields fields, Optional<When> when, OptionalLong until) {
    boolean early =
        until.isPresent()
            && when.isPresent()
            && when.get() instanceof When.At at
            && until.getAsLong() < at.millis();
    if (early) {
      problems.add(
          fields.text(MomentKeys.UNTIL).orElseThrow().place(),
          "until is "
              + Plain.duration(until.getAsLong())
              + "; it must not come before 'at' of the same entry");
    }
  }

  private static Optional<Long> boxed(OptionalLong value) {
    return value.isPresent() ? Optional.of(value.getAsLong()) : Optional.empty();
  }
}
