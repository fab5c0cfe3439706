package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Reads when an entry of the timeline is due, and how it is repeated. */
public final class MomentReader {
  public static final List<String> MOMENTS = List.of("at", "on", "when", "then");
  private static final Pattern TIMES = Pattern.compile("[1-9][0-9]{0,4}");

  /** More would drown every report. */
  public static final long MOST_TIMES = 10_000;

  private final long durationMillis;
  private final Problems problems;
  private final Values values;

  MomentReader(long durationMillis, Problems problems) {
    this.durationMillis = durationMillis;
    this.problems = problems;
    values = new Values(problems);
  }

  /** The moment; {@code isFirst} when no entry stands before this one. */
  Optional<When> when(Fields fields, boolean isFirst) {
    List<String> given = MOMENTS.stream().filter(fields::has).toList();
    if (!given.equals(List.of("on")) && !given.equals(List.of("when"))) {
      fields.refuse(
          "after", "goes only with 'on' or 'when'; for a time after the entry before write 'then'");
    }
    if (given.size() != 1) {
      String text =
          given.isEmpty()
              ? "this entry has no moment; give it one of " + String.join(", ", MOMENTS)
              : "an entry has one moment, this one has " + String.join(" and ", given);
      problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
      return Optional.empty();
    }
    return switch (given.get(0)) {
      case "at" -> at(fields);
      case "on" -> on(fields);
      case "when" -> crossing(fields);
      default -> then(fields, isFirst);
    };
  }

  private Optional<When> at(Fields fields) {
    fields.refuse("from", "does not go with 'at', which waits for no entry; write 'then'");
    return boxed(time(fields, "at")).map(When.At::new);
  }

  private Optional<When> on(Fields fields) {
    Optional<Phase> phase =
        fields.text("on").flatMap(text -> values.constant(text, "on", List.of(Phase.values())));
    OptionalLong delay = delay(fields);
    return phase.isPresent() && delay.isPresent()
        ? Optional.of(new When.On(phase.get(), delay.getAsLong()))
        : Optional.empty();
  }

  private Optional<When> crossing(Fields fields) {
    Optional<Condition> condition = fields.text("when").flatMap(values::condition);
    OptionalLong delay = delay(fields);
    return condition.isPresent() && delay.isPresent()
        ? Optional.of(new When.Crossing(condition.get(), delay.getAsLong()))
        : Optional.empty();
  }

  private OptionalLong delay(Fields fields) {
    if (!fields.has("after")) {
      return OptionalLong.of(0);
    }
    OptionalLong delay = time(fields, "after");
    if (delay.isPresent() && delay.getAsLong() == 0) {
      problems.remark(fields.keyPlace("after"), "unused: no time passes in 0 s; leave it out");
    }
    return delay;
  }

  private Optional<When> then(Fields fields, boolean isFirst) {
    if (isFirst && !fields.has("from")) {
      fields.refuse("then", "has no entry before it to wait for; write 'at' in the first entry");
    }
    return boxed(time(fields, "then")).map(When.Then::new);
  }

  /** How the entry is repeated, if it is; what is wrong is reported. */
  Optional<Repeat> repeat(Fields fields, Optional<When> when) {
    if (!fields.has("every")) {
      fields.refuse("times", "goes only with 'every'; for example 'every: 2 min'");
      fields.refuse("until", "goes only with 'every'; for example 'every: 2 min'");
      return Optional.empty();
    }
    OptionalLong every = time(fields, "every", Repeat.SHORTEST_MILLIS);
    Optional<OptionalLong> times =
        fields.has("times")
            ? fields.text("times").flatMap(this::times)
            : Optional.of(OptionalLong.empty());
    OptionalLong until = time(fields, "until", 0);
    if (every.isEmpty() || times.isEmpty()) {
      return Optional.empty();
    }
    if (times.get().isEmpty() && durationMillis / every.getAsLong() > MOST_TIMES) {
      problems.add(
          fields.keyPlace("every"),
          "this would be done more than " + MOST_TIMES + " times; give it 'times', or more time");
    }
    refuseEarly(fields, when, until);
    if (times.get().equals(OptionalLong.of(1))) {
      problems.remark(
          fields.keyPlace("every"), "unused: what is done once is not repeated; give more 'times'");
    }
    return Optional.of(new Repeat(every.getAsLong(), times.get(), until));
  }

  private void refuseEarly(Fields fields, Optional<When> when, OptionalLong until) {
    boolean early =
        until.isPresent()
            && when.isPresent()
            && when.get() instanceof When.At at
            && until.getAsLong() < at.millis();
    if (early) {
      problems.add(
          fields.text("until").orElseThrow().place(),
          "until is "
              + Plain.duration(until.getAsLong())
              + "; it must not come before 'at' of the same entry");
    }
  }

  private Optional<OptionalLong> times(YamlNode.Text text) {
    boolean number = TIMES.matcher(text.value()).matches();
    if (!number || Long.parseLong(text.value()) > MOST_TIMES) {
      problems.add(
          text.place(),
          "times is "
              + Quote.of(text.value())
              + "; it must be a whole number from 1 to "
              + MOST_TIMES);
      return Optional.empty();
    }
    return Optional.of(OptionalLong.of(Long.parseLong(text.value())));
  }

  private OptionalLong time(Fields fields, String key) {
    return time(fields, key, 0);
  }

  private OptionalLong time(Fields fields, String key, long least) {
    Optional<YamlNode.Text> text = fields.text(key);
    return text.isEmpty()
        ? OptionalLong.empty()
        : values.millis(text.get(), key, least, Scenario.LONGEST_MILLIS);
  }

  private static Optional<Long> boxed(OptionalLong value) {
    return value.isPresent() ? Optional.of(value.getAsLong()) : Optional.empty();
  }
}
