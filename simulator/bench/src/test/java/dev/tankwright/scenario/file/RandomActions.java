package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Actions that a file can say, of every kind, from one seed. */
final class RandomActions {
  private static final long DAY = 24L * 3600 * 1000;

  private final RandomValues values;
  private final DeviceProfile profile;
  private final double brim;

  RandomActions(RandomValues values, DeviceProfile profile, double brim) {
    this.values = values;
    this.profile = profile;
    this.brim = brim;
  }

  Action next() {
    return switch (values.one(Action.Kind.values())) {
      case PRESS -> press();
      case MOVE_LID -> new Action.MoveLid(values.chance(2));
      case BREAK -> broken(values.one(PartFault.values()));
      case REPAIR -> new Action.Repair(values.one(PartFault.values()));
      case FILL ->
          new Action.Fill(
              values.number(0.001, brim),
              values.number(1, 95),
              values.chance(3) ? 1 : values.number(0, 1));
      case MOVE_BASKET -> new Action.MoveBasket(values.one(BasketMove.values()));
      case CUT_POWER -> new Action.CutPower(values.millis(10, DAY));
      case SET_CLOCK -> {
        long by = values.millis(1, DAY);
        yield new Action.SetClock(values.chance(2) ? by : -by);
      }
      case FORCE -> force();
      case RELEASE ->
          new Action.Release(
              values.chance(3) ? List.of(Pin.values()) : List.of(values.one(Pin.values())));
      case HANG_FOIL -> new Action.HangFoil();
    };
  }

  private Action press() {
    Command command = values.one(Command.values());
    if (command == Command.NONE || command == Command.START) {
      String operator = values.chance(2) ? "" : values.line();
      String load = values.chance(2) ? "" : values.line();
      return new Action.Press(Command.START, recipe(), FoilVerdict.NONE, operator, load);
    }
    FoilVerdict verdict =
        command == Command.ACKNOWLEDGE ? values.one(FoilVerdict.values()) : FoilVerdict.NONE;
    return new Action.Press(command, null, verdict);
  }

  private Recipe recipe() {
    int longest = profile.get(Parameter.RUN_MAXIMUM);
    Programme programme = values.one(Programme.values());
    Recipe recipe =
        new Recipe(
            programme,
            values.whole(
                profile.get(Parameter.SETPOINT_MINIMUM), profile.get(Parameter.SETPOINT_MAXIMUM)),
            values.whole(1, longest),
            programme == Programme.DEGAS_ONLY ? 0 : values.whole(1, longest));
    int hottest = values.chance(2) ? Chemistry.NO_LIMIT : values.whole(0, 100_000);
    return recipe.with(new Chemistry(values.chance(2), hottest));
  }

  private Action broken(PartFault fault) {
    long millis = values.chance(2) ? Action.Break.FOR_GOOD : values.millis(10, DAY);
    boolean whole =
        fault.measure() == PartFault.Measure.BITS || fault.measure() == PartFault.Measure.OCTETS;
    double size = fault.usualSize();
    if (fault.measure() != PartFault.Measure.NONE && !values.chance(4)) {
      size = values.number(fault.leastSize(), fault.mostSize());
    }
    size = whole ? Math.rint(size) : size;
    return new Action.Break(fault, fault.allows(size) ? size : fault.usualSize(), millis);
  }

  private Action force() {
    List<PinForce> forced = new ArrayList<>();
    for (Pin pin : Pin.values()) {
      if (values.chance(5)) {
        forced.add(value(pin));
      }
    }
    return new Action.Force(forced.isEmpty() ? List.of(value(Pin.MAINS)) : forced);
  }

  private PinForce value(Pin pin) {
    return switch (pin.kind()) {
      case COUNT -> new PinForce(pin, (int) values.millis(Integer.MIN_VALUE, Integer.MAX_VALUE));
      case SWITCH -> new PinForce(pin, values.whole(0, 1));
      case COMMAND -> new PinForce(pin, values.whole(PinForce.NONE, Command.values().length - 1));
      case VERDICT ->
          new PinForce(pin, values.whole(PinForce.NONE, FoilVerdict.values().length - 1));
      case RECIPE ->
          new PinForce(
              pin,
              0,
              values.chance(3) ? Optional.empty() : Optional.of(recipe().with(Chemistry.UNSTATED)));
    };
  }
}
