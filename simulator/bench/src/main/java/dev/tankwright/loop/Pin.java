package dev.tankwright.loop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The controller's pins, by which values can be forced on it whatever the bath does. */
public enum Pin {
  /** Reading of the millisecond counter. */
  COUNTER(Kind.COUNT),
  /** Counts of the control sensor. */
  CONTROL_SENSOR(Kind.COUNT),
  /** Counts of the cut-off sensor. */
  CUT_OFF_SENSOR(Kind.COUNT),
  /** The lid contact that closes its circuit when the lid is closed. */
  LID_MAKE_CONTACT(Kind.SWITCH),
  /** The lid contact that opens its circuit when the lid is closed. */
  LID_BREAK_CONTACT(Kind.SWITCH),
  /** On when the minimum contact is wet. */
  MINIMUM_LEVEL(Kind.SWITCH),
  /** On when the fill mark's contact is wet. */
  FILL_MARK(Kind.SWITCH),
  /** On when the drain's valve stands open. */
  DRAIN_OPEN_END(Kind.SWITCH),
  /** On when the drain's valve stands closed. */
  DRAIN_CLOSED_END(Kind.SWITCH),
  /** On while current flows through the heater. */
  HEATER_CURRENT(Kind.SWITCH),
  /** On while the generator reports that it runs. */
  GENERATOR_RUNNING(Kind.SWITCH),
  /** On while the generator reports a fault. */
  GENERATOR_FAULT(Kind.SWITCH),
  /** On while mains is present. */
  MAINS(Kind.SWITCH),
  /** The command that stands on its pins. */
  COMMAND(Kind.COMMAND),
  /** Number of the command; any change announces a new one. */
  COMMAND_NUMBER(Kind.COUNT),
  /** The recipe that stands beside the command. */
  RECIPE(Kind.RECIPE),
  /** The verdict on the foil that stands beside the command. */
  FOIL_VERDICT(Kind.VERDICT);

  /** What values a pin takes. */
  public enum Kind {
    /** A whole number of 32 bits. */
    COUNT,
    /** On or off. */
    SWITCH,
    /** A command, or {@link #ABSENT}. */
    COMMAND,
    /** A recipe, or {@link #ABSENT}. */
    RECIPE,
    /** A verdict, or {@link #ABSENT}. */
    VERDICT
  }

  /** Word for no command, recipe or verdict at all. */
  public static final String ABSENT = "ABSENT";

  private final Kind kind;

  Pin(Kind kind) {
    this.kind = kind;
  }

  /** What values the pin takes. */
  public Kind kind() {
    return kind;
  }

  /** Name in files, for example {@code lid-make-contact}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Every name, in order. */
  public static List<String> keys() {
    return Arrays.stream(values()).map(Pin::key).toList();
  }

  /** The pin of that name. */
  public static Optional<Pin> byKey(String key) {
    return Arrays.stream(values()).filter(pin -> pin.key().equals(key)).findFirst();
  }
}
