package dev.tankwright.explore;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything that the world can do in a scan: lid, level, temperature, mains and keys are free, and
 * so is what faulty parts say. Every choice stands once, in a fixed order.
 */
final class Choices {
  private static final List<Command> PLAIN =
      List.of(
          Command.PAUSE,
          Command.RESUME,
          Command.STOP,
          Command.DRAIN,
          Command.FRESH_SOLUTION,
          Command.RESET);
  private static final int PINS = 12;
  private static final int SHORT_RUN = ShortTimes.SCAN_MS;
  private static final int LONG_RUN = 2 * ShortTimes.SCAN_MS;

  private final Detail detail;
  private final Temperatures temperatures;
  private final List<Key> keys;
  private final List<Choice> all;
  private final int temperatureCount;
  private final Following following;

  /**
   * Works out the choices.
   *
   * @param profile limits with short times
   * @param faulty parts that are faulty
   * @param detail how finely the world is divided
   */
  Choices(DeviceProfile profile, Set<Part> faulty, Detail detail) {
    int cuts = faulty.isEmpty() ? PowerCut.values().length : 0;
    this.detail = detail;
    temperatures = new Temperatures(profile, detail);
    keys = keys(profile);
    // Keys last: most of them do nothing, so neighbours in the list lead to the same state.
    Map<Choice, Set<Choice>> byPins = new LinkedHashMap<>();
    nominal().stream()
        .flatMap(choice -> freed(choice, faulty).stream())
        .forEach(
            c -> byPins.computeIfAbsent(c.withKey(Key.NONE), k -> new LinkedHashSet<>()).add(c));
    all = byPins.values().stream().flatMap(Set::stream).toList();
    temperatureCount = detail.isGradual() ? temperatures.count() : 1;
    boolean keysFollow = faulty.contains(Part.COMMANDS);
    following = new Following(all, cuts, detail, temperatureCount, keysFollow);
  }

  private List<Choice> freed(Choice choice, Set<Part> faulty) {
    List<Choice> freed = List.of(choice);
    for (Part part : faulty) {
      freed = freed.stream().flatMap(c -> part.freed(c, detail, temperatures).stream()).toList();
    }
    return freed;
  }

  private List<Choice> nominal() {
    List<Choice> nominal = new ArrayList<>();
    for (int temperature = 0; temperature < temperatures.count(); temperature++) {
      for (int pins = 0; pins < PINS; pins++) {
        for (Key key : keys) {
          Choice choice = nominal(temperature, pins, key);
          boolean between = choice.minimum() && !choice.fillMark();
          if (detail == Detail.FINE || !between) {
            nominal.add(choice);
          }
        }
      }
    }
    return nominal;
  }

  private Choice nominal(int temperature, int pins, Key key) {
    int counts = temperatures.counts(temperature);
    boolean closed = pins % 2 == 0;
    boolean mains = pins / 2 % 2 == 0;
    boolean minimum = pins / 4 < 2;
    boolean fill = pins / 4 < 1;
    return new Choice(
        detail.isGradual() ? temperature : 0,
        counts,
        counts,
        closed,
        !closed,
        minimum,
        fill,
        Answer.FOLLOWS,
        Answer.FOLLOWS,
        Answer.FOLLOWS,
        Answer.FOLLOWS,
        false,
        mains,
        Step.USUAL,
        key);
  }

  private List<Key> keys(DeviceProfile profile) {
    int setpoint = temperatures.setpointMilliC();
    List<Key> keys = new ArrayList<>();
    keys.add(Key.NONE);
    keys.add(Key.start(new Recipe(Programme.CUSTOM, setpoint, LONG_RUN, SHORT_RUN)));
    keys.add(Key.start(new Recipe(Programme.FOIL_CHECK, setpoint, SHORT_RUN, SHORT_RUN)));
    for (Command command : PLAIN) {
      keys.add(Key.of(command));
    }
    keys.add(Key.acknowledge(FoilVerdict.MARKED));
    if (detail == Detail.FINE) {
      keys.add(Key.start(null));
      keys.add(Key.acknowledge(FoilVerdict.NONE));
      int tooHot = profile.get(Parameter.SETPOINT_MAXIMUM) + 1;
      keys.add(Key.start(new Recipe(Programme.CUSTOM, tooHot, SHORT_RUN, SHORT_RUN)));
      keys.add(Key.start(new Recipe(Programme.DEGAS_ONLY, setpoint, SHORT_RUN, 0)));
      keys.add(Key.acknowledge(FoilVerdict.UNMARKED));
    }
    return List.copyOf(keys);
  }

  /** Every choice. */
  List<Choice> all() {
    return all;
  }

  /**
   * Which choices can follow a scan in which the bath had the given class of temperature. Those
   * behind the last choice are losses of power.
   *
   * @param pressed whether a key was pressed in that scan: the operator lets go before pressing
   *     again
   * @param latched whether a fault is latched that stops
   */
  int[] after(int temperature, boolean pressed, boolean latched) {
    return following.after(temperature, pressed, latched);
  }

  /** How many classes of temperature the bath has. */
  int temperatures() {
    return temperatureCount;
  }

  /**
   * The choice with every part healthy, the lid closed, the tank full, the bath as cold as it can
   * become from the given class, and a key pressed.
   */
  int healthy(int temperature, Command command) {
    int colder = detail.isGradual() ? Math.max(0, temperature - 1) : 0;
    FoilVerdict verdict = command == Command.ACKNOWLEDGE ? FoilVerdict.MARKED : FoilVerdict.NONE;
    Key key = command == Command.NONE ? Key.NONE : new Key(command, null, verdict, true);
    int counts = temperatures.counts(colder);
    for (int i = 0; i < all.size(); i++) {
      Choice c = all.get(i);
      boolean calm = c.mains() && c.step() == Step.USUAL && !c.generatorFault();
      boolean level = c.minimum() && c.fillMark() && c.lidMake() && !c.lidBreak();
      boolean sensors = c.temperature() == colder && c.control() == counts && c.cutOff() == counts;
      boolean answers =
          c.openEnd() == Answer.FOLLOWS
              && c.closedEnd() == Answer.FOLLOWS
              && c.current() == Answer.FOLLOWS
              && c.running() == Answer.FOLLOWS;
      if (calm && answers && level && sensors && c.key().equals(key)) {
        return i;
      }
    }
    throw new IllegalStateException("no healthy choice with " + key);
  }
}
