package dev.tankwright.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A part that can be faulty: what it says is then free in every scan. */
public enum Part {
  /** The sensor by which is regulated. */
  CONTROL_SENSOR,
  /** The sensor of the cut-off. */
  CUT_OFF_SENSOR,
  /** The lid contact that closes. */
  LID_MAKE_CONTACT,
  /** The lid contact that opens. */
  LID_BREAK_CONTACT,
  /** The minimum contact. */
  MINIMUM_CONTACT,
  /** The fill mark's contact. */
  FILL_MARK,
  /** The drain's open end contact. */
  DRAIN_OPEN_END,
  /** The drain's closed end contact. */
  DRAIN_CLOSED_END,
  /** The heater's current, as with a welded relay or a broken element. */
  HEATER_CURRENT,
  /** The generator's running feedback. */
  GENERATOR_RUNNING,
  /** The generator's fault line. */
  GENERATOR_FAULT,
  /** The millisecond counter. */
  COUNTER,
  /** The command's pins. */
  COMMANDS;

  private static final boolean[] BOTH = {false, true};
  private static final Answer[] FREE = {Answer.FOLLOWS, Answer.OPPOSES};

  /** Name in lists, for example {@code control-sensor}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The part of a name.
   *
   * @throws IllegalArgumentException with the names that there are, when there is no such part
   */
  static Part of(String key) {
    return Stream.of(values())
        .filter(part -> part.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(unknown(key)));
  }

  private static String unknown(String key) {
    String known = Stream.of(values()).map(Part::key).collect(Collectors.joining(", "));
    return "'" + key + "' is no part; known are " + known;
  }

  /** Whether it can bring many faults by itself. */
  boolean bringsMany() {
    return switch (this) {
      case CONTROL_SENSOR, CUT_OFF_SENSOR, COUNTER, COMMANDS -> true;
      default -> false;
    };
  }

  /** Everything that the world can do instead of the given choice when this part is faulty. */
  List<Choice> freed(Choice c, Detail detail, Temperatures temperatures) {
    List<Choice> all = new ArrayList<>();
    switch (this) {
      case CONTROL_SENSOR -> {
        for (int counts : temperatures.faultyCounts()) {
          all.add(c.withControl(counts));
        }
      }
      case CUT_OFF_SENSOR -> {
        for (int counts : temperatures.faultyCounts()) {
          all.add(c.withCutOff(counts));
        }
      }
      case COUNTER -> {
        for (Step step : detail.steps()) {
          all.add(c.withStep(step));
        }
      }
      case COMMANDS -> {
        all.add(c);
        all.add(c.withKey(c.key().stale()));
        if (c.key().equals(Key.NONE)) {
          all.add(c.withKey(Key.of(null)));
        }
      }
      default -> freedSwitch(c, all);
    }
    return all;
  }

  private void freedSwitch(Choice c, List<Choice> all) {
    for (int i = 0; i < 2; i++) {
      boolean on = BOTH[i];
      Answer free = FREE[i];
      all.add(
          switch (this) {
            case LID_MAKE_CONTACT -> c.withLid(on, c.lidBreak());
            case LID_BREAK_CONTACT -> c.withLid(c.lidMake(), on);
            case MINIMUM_CONTACT -> c.withLevel(on, c.fillMark());
            case FILL_MARK -> c.withLevel(c.minimum(), on);
            case DRAIN_OPEN_END -> c.withDrain(free, c.closedEnd());
            case DRAIN_CLOSED_END -> c.withDrain(c.openEnd(), free);
            case HEATER_CURRENT -> c.withCurrent(free);
            case GENERATOR_RUNNING -> c.withGenerator(free, c.generatorFault());
            case GENERATOR_FAULT -> c.withGenerator(c.running(), on);
            default -> throw new IllegalStateException(this + " is no switch");
          });
    }
  }
}
