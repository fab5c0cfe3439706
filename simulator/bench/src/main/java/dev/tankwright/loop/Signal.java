package dev.tankwright.loop;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.rule.Rule;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that can be watched, traced and required. Each signal is one {@code double}: a number
 * in its unit, 0 or 1 for a switch, or the position of a word in its {@link #words()}.
 */
public enum Signal {
  /** True temperature of the solution. */
  LIQUID_TEMPERATURE(Quantity.TEMPERATURE),
  /** True temperature of the tank's wall. */
  WALL_TEMPERATURE(Quantity.TEMPERATURE),
  /** Temperature as the controller has it from the control sensor. */
  MEASURED_TEMPERATURE(Quantity.TEMPERATURE),
  /** Setpoint of the cycle, 0 outside a cycle. */
  SETPOINT(Quantity.TEMPERATURE),
  /** Volume in the tank. */
  VOLUME(Quantity.VOLUME),
  /** Dissolved gas, 1 at saturation. */
  DISSOLVED_GAS(Quantity.FRACTION),
  /** Cavitation activity index, 0–1. */
  ACTIVITY(Quantity.FRACTION),
  /** Temperature of the load; the room's while there is none. */
  LOAD_TEMPERATURE(Quantity.TEMPERATURE),
  /** Soil left on the load, as a share of what it was hung in with. */
  SOIL_LEFT(Quantity.FRACTION),
  /** Pits on the piece of foil that shows most. */
  FOIL_PITS(Quantity.MARKS),
  /** Holes in the piece of foil that shows most. */
  FOIL_HOLES(Quantity.MARKS),
  /** Power that the heater turns into heat. */
  HEATER_POWER(Quantity.POWER),
  /** Power that the ultrasound brings into the bath. */
  ULTRASOUND_POWER(Quantity.POWER),
  /** Mains voltage as a share of its nominal value. */
  MAINS_VOLTAGE(Quantity.FRACTION),
  /** The heater relay is commanded closed. */
  HEATER(Quantity.SWITCH),
  /** The series relay of the cut-off is commanded closed. */
  CUT_OFF_RELAY(Quantity.SWITCH),
  /** The generator is enabled. */
  ULTRASOUND(Quantity.SWITCH),
  /** Drive level of the generator. */
  DRIVE_LEVEL(Quantity.FRACTION),
  /** The drain valve is commanded open. */
  DRAIN_VALVE(Quantity.SWITCH),
  /** The buzzer sounds. */
  BUZZER(Quantity.SWITCH),
  /** The lid is truly open. */
  LID_OPEN(Quantity.SWITCH),
  /** The solution truly stands below the minimum for heating and sounding. */
  LEVEL_LOW(Quantity.SWITCH),
  /** The hardware's own limiter has opened the heater circuit for good. */
  LIMITER_TRIPPED(Quantity.SWITCH),
  /** Any part is broken now, or the operator is out of order. */
  PART_BROKEN(Quantity.SWITCH),
  /** The board has its supply; without it nothing is driven, and the panel shows nothing. */
  BOARD_SUPPLIED(Quantity.SWITCH),
  /** The panel says that degassing is required. */
  DEGAS_OWED(Quantity.SWITCH),
  /** The panel says that the solution is older than it should be. */
  SOLUTION_DUE(Quantity.SWITCH),
  /** The panel says that the tank is to be drained and dried. */
  DRAIN_DUE(Quantity.SWITCH),
  /** The panel says that the next foil check is due. */
  FOIL_CHECK_DUE(Quantity.SWITCH),
  /** The panel says that the solution is kept warm between two cycles. */
  KEEPING_WARM(Quantity.SWITCH),
  /** What is left of degassing and cleaning, as the panel says. */
  REMAINING_TIME(Quantity.TIME),
  /** Phase of the controller. */
  PHASE(names(Phase.values())),
  /** Most severe latched fault, or NONE. */
  FAULT(withNone(Fault.values())),
  /** Reason of the last refused command, or NONE. */
  REFUSAL(withNone(Refusal.values())),
  /** The rule of every scan that this scan breaks, or NONE. */
  BROKEN_RULE(withNone(Rule.values()));

  /** What a signal's number means. */
  public enum Quantity {
    /** °C; margins are in K. */
    TEMPERATURE("°C", "K"),
    /** L. */
    VOLUME("L", "L"),
    /** W. */
    POWER("W", "W"),
    /** s. */
    TIME("s", "s"),
    /** 1, with % allowed in files. */
    FRACTION("", ""),
    /** A plain number of marks on foil. */
    MARKS("", "marks"),
    /** 0 or 1. */
    SWITCH("", ""),
    /** Position in a list of words. */
    WORD("", "");

    private final String unit;
    private final String marginUnit;

    Quantity(String unit, String marginUnit) {
      this.unit = unit;
      this.marginUnit = marginUnit;
    }

    /** Unit of the value, empty where there is none. */
    public String unit() {
      return unit;
    }

    /** Unit of a difference of two values, empty where there is none. */
    public String marginUnit() {
      return marginUnit;
    }
  }

  private static final List<Signal> ALL = List.of(values());

  private final Quantity quantity;

  @SuppressWarnings("ImmutableEnumChecker") // Made by toList and List.of only, which cannot change.
  private final List<String> words;

  private final String key = name().toLowerCase(Locale.ROOT).replace('_', '-');

  Signal(Quantity quantity) {
    this.quantity = quantity;
    this.words = List.of();
  }

  Signal(List<String> words) {
    this.quantity = Quantity.WORD;
    this.words = words;
  }

  /** All signals in the order of the trace's columns. */
  public static List<Signal> all() {
    return ALL;
  }

  /** The signal of that name, as files write it. */
  public static Optional<Signal> byKey(String key) {
    return ALL.stream().filter(signal -> signal.key.equals(key)).findFirst();
  }

  /** Name in files, for example {@code liquid-temperature}. */
  public String key() {
    return key;
  }

  /** What the number means. */
  public Quantity quantity() {
    return quantity;
  }

  /** The words of a {@link Quantity#WORD} signal by position; empty for others. */
  public List<String> words() {
    return words;
  }

  private static List<String> names(Enum<?>[] values) {
    return Arrays.stream(values).map(Enum::name).toList();
  }

  private static List<String> withNone(Enum<?>[] values) {
    return Stream.concat(Stream.of("NONE"), Arrays.stream(values).map(Enum::name)).toList();
  }
}
