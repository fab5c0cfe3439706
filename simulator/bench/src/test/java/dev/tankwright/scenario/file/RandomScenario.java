package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.yaml.Place;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** A scenario that a file can say, from one seed: everything in it is drawn. */
final class RandomScenario {
  private static final long DAY = Scenario.LONGEST_MILLIS;
  private static final long MOST_TIMES = 10_000;

  private final RandomValues values;
  private final String bathName;
  private final BathProfile bath;
  private final DeviceProfile profile;
  private final long duration;
  private final RandomActions actions;
  private final RandomRequirements requirements;
  private final List<String> anchors = new ArrayList<>(List.of(TimelineEntry.START));

  RandomScenario(long seed) {
    values = new RandomValues(seed);
    bathName = values.one(BuiltInBaths.names());
    bath = BuiltInBaths.byName(bathName).orElseThrow();
    profile = profile();
    duration = values.millis(Scenario.SHORTEST_MILLIS, DAY);
    actions = new RandomActions(values, profile, bath.levels().brimLitres());
    requirements = new RandomRequirements(values, duration);
  }

  /** Name of its bath, which comes with the program. */
  String bathName() {
    return bathName;
  }

  Scenario scenario() {
    return new Scenario(
        "random.yaml",
        "",
        values.line(),
        values.line(),
        "device-" + values.whole(0, 99),
        Instant.ofEpochMilli(values.millis(0, 1L << 40) + 946_684_800_000L),
        values.millis(0, Scenario.HIGHEST_SEED),
        duration,
        bath,
        start(),
        profile,
        timeline(),
        required(),
        new Contents(values.chance(2) ? "" : values.line(), values.chance(2) ? "" : values.line()));
  }

  private BathStart start() {
    return new BathStart(
        values.number(0, bath.levels().brimLitres()),
        values.number(1, 95),
        values.number(5, 40),
        values.number(0, 1.2),
        values.number(0.05, 0.95),
        values.number(0, 1),
        values.chance(2)
            ? BathStart.Load.NONE
            : new BathStart.Load(values.number(0, 20), values.chance(2) ? 0 : values.number(0, 1)));
  }

  private DeviceProfile profile() {
    DeviceProfile drawn = DeviceProfile.sixLitre();
    boolean shortTime = values.chance(4);
    drawn = shortTime ? drawn.withShortTime() : drawn;
    for (Parameter parameter : Parameter.values()) {
      int least = shortTime ? parameter.shortMinimum() : parameter.minimum();
      if (values.chance(6) && parameter != Parameter.SETPOINT_MINIMUM) {
        drawn = changed(drawn, parameter, values.whole(least, parameter.maximum()));
      }
    }
    return drawn;
  }

  /** The profile as it was where the value does not go with the others. */
  private static DeviceProfile changed(DeviceProfile profile, Parameter parameter, int value) {
    try {
      return profile.with(parameter, value);
    } catch (IllegalArgumentException e) {
      return profile;
    }
  }

  private List<TimelineEntry> timeline() {
    List<TimelineEntry> entries = new ArrayList<>();
    boolean endless = false;
    int size = values.whole(0, 12);
    for (int i = 0; i < size; i++) {
      boolean follows = i > 0 && !endless && values.chance(2);
      When when = when();
      String from = when instanceof When.At || follows ? "" : values.one(anchors);
      Optional<Repeat> repeat = values.chance(4) ? Optional.of(repeat(when)) : Optional.empty();
      endless = repeat.isPresent() && !repeat.get().isBounded();
      String name = values.chance(3) ? i + values.line() : "";
      if (!name.isEmpty() && !endless) {
        anchors.add(name);
      }
      entries.add(new TimelineEntry(name, from, when, repeat, actions.next(), Place.START));
    }
    return entries;
  }

  private When when() {
    long delay = values.chance(3) ? 0 : values.millis(0, DAY);
    return switch (values.whole(0, 3)) {
      case 0 -> new When.At(delay);
      case 1 -> new When.Later(delay);
      case 2 -> new When.On(values.one(Phase.values()), delay);
      default -> new When.Crossing(requirements.condition(2), delay);
    };
  }

  private Repeat repeat(When when) {
    long every = values.millis(Repeat.SHORTEST_MILLIS, DAY);
    boolean counted = values.chance(2) || duration / every > MOST_TIMES;
    long earliest = when instanceof When.At at ? at.millis() : 0;
    return new Repeat(
        every,
        counted ? OptionalLong.of(values.whole(1, (int) MOST_TIMES)) : OptionalLong.empty(),
        values.chance(2) ? OptionalLong.empty() : OptionalLong.of(values.millis(earliest, DAY)));
  }

  private List<Requirement> required() {
    List<Requirement> drawn = new ArrayList<>();
    int size = values.whole(1, 8);
    for (int i = 0; i < size; i++) {
      drawn.add(requirements.next(i));
    }
    return drawn;
  }
}
