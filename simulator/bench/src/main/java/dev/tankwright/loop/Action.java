package dev.tankwright.loop;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import java.util.List;

/**
 * Something done to the bath at a moment, by the operator or from outside. Whoever has to do
 * something for each kind switches over {@link #kind()}; the compiler finds a kind that is
 * forgotten.
 */
public sealed interface Action {
  /** The kinds of action, each for one class below. */
  enum Kind {
    /** {@link Press}. */
    PRESS("command"),
    /** {@link MoveLid}. */
    MOVE_LID("lid"),
    /** {@link Break}. */
    BREAK("break"),
    /** {@link Repair}. */
    REPAIR("repair"),
    /** {@link Fill}. */
    FILL("fill"),
    /** {@link MoveBasket}. */
    MOVE_BASKET("basket"),
    /** {@link CutPower}. */
    CUT_POWER("cut-power"),
    /** {@link SetClock}. */
    SET_CLOCK("set-clock"),
    /** {@link Force}. */
    FORCE("force"),
    /** {@link Release}. */
    RELEASE("release"),
    /** {@link HangFoil}. */
    HANG_FOIL("foil");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /** The key that stands for it in files. */
    public String key() {
      return key;
    }
  }

  /** Its kind, which says what class it has. */
  Kind kind();

  /** Whether it is this command's key that is pressed. */
  default boolean presses(Command command) {
    return false;
  }

  /**
   * The operator presses a key.
   *
   * @param command what is asked
   * @param recipe set values of {@link Command#START}, {@code null} for every other command
   * @param foilVerdict what the operator saw, with {@link Command#ACKNOWLEDGE} after a foil check
   * @param operator who starts the cycle, as the facility's systems call them; the host hears it,
   *     the controller does not; empty where nobody says
   * @param load what the facility's systems call the load, likewise
   */
  record Press(
      Command command, Recipe recipe, FoilVerdict foilVerdict, String operator, String load)
      implements Action {
    /** A key pressed by nobody in particular. */
    public Press(Command command, Recipe recipe, FoilVerdict foilVerdict) {
      this(command, recipe, foilVerdict, "", "");
    }

    @Override
    public boolean presses(Command other) {
      return command == other;
    }

    @Override
    public Kind kind() {
      return Kind.PRESS;
    }
  }

  /**
   * The lid is moved.
   *
   * @param open where it is moved to
   */
  record MoveLid(boolean open) implements Action {
    @Override
    public Kind kind() {
      return Kind.MOVE_LID;
    }
  }

  /**
   * Solution is poured in.
   *
   * @param litres how much, L, above 0
   * @param celsius how warm, °C
   * @param detergent share of the right detergent in it, 0 for plain water, 1 as it should be
   */
  record Fill(double litres, double celsius, double detergent) implements Action {
    /** Solution with its detergent. */
    public Fill(double litres, double celsius) {
      this(litres, celsius, 1);
    }

    @Override
    public Kind kind() {
      return Kind.FILL;
    }
  }

  /**
   * The basket is moved.
   *
   * @param move how
   */
  record MoveBasket(BasketMove move) implements Action {
    @Override
    public Kind kind() {
      return Kind.MOVE_BASKET;
    }
  }

  /** Three fresh pieces of foil are hung in the bath. */
  record HangFoil() implements Action {
    @Override
    public Kind kind() {
      return Kind.HANG_FOIL;
    }
  }

  /**
   * The power of the whole device is cut, the supply of the board with it.
   *
   * @param forMillis for how long, ms, above 0
   */
  record CutPower(long forMillis) implements Action {
    /**
     * Checks the time.
     *
     * @throws IllegalArgumentException if it is not above 0
     */
    public CutPower {
      if (forMillis <= 0) {
        throw new IllegalArgumentException("the power cannot be cut for " + forMillis + " ms");
      }
    }

    @Override
    public Kind kind() {
      return Kind.CUT_POWER;
    }
  }

  /**
   * The clock of the device's host is set. The controller has no clock, so nothing else changes.
   *
   * @param byMillis how far, ms; below 0 sets it back; not 0
   */
  record SetClock(long byMillis) implements Action {
    /**
     * Checks the step.
     *
     * @throws IllegalArgumentException if it is 0
     */
    public SetClock {
      if (byMillis == 0) {
        throw new IllegalArgumentException("a clock cannot be set by 0 ms");
      }
    }

    @Override
    public Kind kind() {
      return Kind.SET_CLOCK;
    }
  }

  /**
   * A part breaks.
   *
   * @param fault how
   * @param size by how much, in the fault's own unit; 0 for a fault without a size
   * @param forMillis after which time it is whole again by itself, ms, or {@link #FOR_GOOD}
   */
  record Break(PartFault fault, double size, long forMillis) implements Action {
    /** It stays broken until it is repaired. */
    public static final long FOR_GOOD = 0;

    /**
     * Checks the size.
     *
     * @throws IllegalArgumentException if the fault does not allow it, or the time is negative
     */
    public Break {
      if (!fault.allows(size) || forMillis < 0) {
        throw new IllegalArgumentException(
            fault.key() + " cannot break by " + size + " for " + forMillis + " ms");
      }
    }

    /** A part breaks by its usual size, for good. */
    public Break(PartFault fault) {
      this(fault, fault.usualSize(), FOR_GOOD);
    }

    @Override
    public Kind kind() {
      return Kind.BREAK;
    }
  }

  /**
   * A part is repaired.
   *
   * @param fault what is repaired
   */
  record Repair(PartFault fault) implements Action {
    @Override
    public Kind kind() {
      return Kind.REPAIR;
    }
  }

  /**
   * Values are put on pins, whatever the bath and the operator do.
   *
   * @param values the values, each pin once
   */
  record Force(List<PinForce> values) implements Action {
    /** Keeps its own copy of the list. */
    public Force {
      values = List.copyOf(values);
    }

    @Override
    public Kind kind() {
      return Kind.FORCE;
    }
  }

  /**
   * Pins say again what is.
   *
   * @param pins which
   */
  record Release(List<Pin> pins) implements Action {
    /** Keeps its own copy of the list. */
    public Release {
      pins = List.copyOf(pins);
    }

    @Override
    public Kind kind() {
      return Kind.RELEASE;
    }
  }
}
