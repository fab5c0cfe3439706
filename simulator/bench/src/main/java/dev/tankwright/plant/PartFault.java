package dev.tankwright.plant;

import static dev.tankwright.plant.PartFault.Measure.BITS;
import static dev.tankwright.plant.PartFault.Measure.DIFFERENCE;
import static dev.tankwright.plant.PartFault.Measure.DRIFT;
import static dev.tankwright.plant.PartFault.Measure.NONE;
import static dev.tankwright.plant.PartFault.Measure.OCTETS;
import static dev.tankwright.plant.PartFault.Measure.SHARE;
import static dev.tankwright.plant.PartFault.Measure.TIME;
import static dev.tankwright.plant.PartFault.Measure.VOLUME;

import java.util.Locale;

/**
 * The ways in which parts of the bath can be broken, each by name. Some have a size: by how much.
 * Usual sizes and ranges are our own choice, without a source.
 */
public enum PartFault {
  /** The control sensor's circuit is open. */
  CONTROL_SENSOR_OPEN,
  /** The control sensor's circuit is shorted. */
  CONTROL_SENSOR_SHORT,
  /** The control sensor's reading stands still. */
  CONTROL_SENSOR_STUCK,
  /** The control sensor's reading runs away, up or down. */
  CONTROL_SENSOR_DRIFTING(DRIFT, -1, -20, 20),
  /** The control sensor's reading is off in every scan by chance, at most so far either way. */
  CONTROL_SENSOR_NOISY(DIFFERENCE, 5, 0.1, 50),
  /** The cut-off sensor's circuit is open. */
  CUT_OFF_SENSOR_OPEN,
  /** The cut-off sensor's circuit is shorted. */
  CUT_OFF_SENSOR_SHORT,
  /** The cut-off sensor's reading stands still. */
  CUT_OFF_SENSOR_STUCK,
  /** The cut-off sensor's reading runs away, up or down. */
  CUT_OFF_SENSOR_DRIFTING(DRIFT, -1, -20, 20),
  /** The cut-off sensor's reading is off in every scan by chance, at most so far either way. */
  CUT_OFF_SENSOR_NOISY(DIFFERENCE, 5, 0.1, 50),
  /** Each sensor is wired to the other's input. */
  SENSORS_SWAPPED,
  /** The converter repeats its last readings of both sensors. */
  CONVERTER_STUCK,
  /** The lowest bits of every reading are lost, so that the codes between are missing. */
  CONVERTER_MISSING_CODES(BITS, 4, 1, 8),
  /** The lid's making contact does not close. */
  LID_MAKE_CONTACT_BROKEN,
  /** The lid's making contact stays closed. */
  LID_MAKE_CONTACT_WELDED,
  /** The lid's breaking contact does not close. */
  LID_BREAK_CONTACT_BROKEN,
  /** The lid's breaking contact stays closed. */
  LID_BREAK_CONTACT_WELDED,
  /** Both lid contacts read wrong by chance, in this share of the scans. */
  LID_CONTACTS_BOUNCING(SHARE, 0.2, 0.001, 1),
  /** Both lid contacts are bridged to say closed. */
  LID_CONTACTS_BYPASSED,
  /** The minimum level contact reads wet, whatever the level. */
  MINIMUM_LEVEL_STUCK_WET,
  /** The minimum level contact reads dry, whatever the level. */
  MINIMUM_LEVEL_STUCK_DRY,
  /** The fill mark's contact reads wet, whatever the level. */
  FILL_MARK_STUCK_WET,
  /** The fill mark's contact reads dry, whatever the level. */
  FILL_MARK_STUCK_DRY,
  /** Foam wets the level contacts as so much more solution would. */
  LEVEL_FOAMED(VOLUME, 1, 0.05, 3),
  /** The heater relay's contacts are welded shut. */
  HEATER_RELAY_WELDED,
  /** The contacts of the relay in series with the heater relay are welded shut. */
  CUT_OFF_RELAY_WELDED,
  /** The heater element is open: no current, no heat. */
  HEATER_OPEN,
  /** Only this share of the heater's power is left. */
  HEATER_PARTIAL(SHARE, 0.5, 0.01, 0.99),
  /** The heater-current sense reads no current, whatever flows. */
  HEATER_CURRENT_SENSE_DEAD,
  /** The self-holding limiter on the wall does not open. */
  LIMITER_STUCK,
  /** The thermal fuse on the wall does not open. */
  FUSE_STUCK,
  /** The generator does not run and reports a fault. */
  GENERATOR_DEAD,
  /** The generator takes too much current: it trips soon after every start and reports a fault. */
  GENERATOR_OVER_CURRENT,
  /** The generator misses the transducers' resonance; this share of the power is left. */
  GENERATOR_OFF_RESONANCE(SHARE, 0.3, 0.01, 0.99),
  /** This share of the transducers does not sound. */
  TRANSDUCERS_DEAD(SHARE, 0.25, 0.01, 0.99),
  /** Nothing passes the open drain. */
  DRAIN_BLOCKED,
  /** Only this share of the drain's section is left. */
  DRAIN_SLOW(SHARE, 0.2, 0.01, 0.99),
  /** The drain valve does not move. */
  DRAIN_VALVE_STUCK,
  /** The drain valve runs open and stays there. */
  DRAIN_VALVE_STUCK_OPEN,
  /** The drain valve runs closed and stays there. */
  DRAIN_VALVE_STUCK_CLOSED,
  /** The drain lets solution through this share of its section although it is closed. */
  DRAIN_LEAKING(SHARE, 0.25, 0.001, 1),
  /** The hand valve behind the drain is left closed: nothing passes, not even a leak. */
  PUMP_OUT_CLOSED,
  /** Mains is absent. */
  MAINS_CUT,
  /** This share of the nominal voltage is missing. */
  MAINS_SAG(SHARE, 0.2, 0.01, 0.9),
  /** The voltage breaks down in the first half of every such period. */
  MAINS_BROWN_OUTS(TIME, 2, 0.1, 600),
  /** The millisecond counter stands still. */
  CLOCK_STALLED,
  /** The millisecond counter runs too fast by this share. */
  CLOCK_FAST(SHARE, 0.1, 0.001, 20),
  /** The millisecond counter runs too slow by this share. */
  CLOCK_SLOW(SHARE, 0.1, 0.001, 0.99),
  /** Of every save into the board's memory only so many octets are written, the first ones. */
  MEMORY_CUT_SHORT(OCTETS, 8, 1, 1000),
  /** So many bits of one octet read wrong in each copy of what the board's memory keeps. */
  MEMORY_DAMAGED(BITS, 1, 1, 8),
  /** A stuck key: the operator's last command comes anew after every such time. */
  KEY_STUCK(TIME, 0.1, 0.01, 60),
  /** The operator presses RESUME and START by turns, once in every such time. */
  OPERATOR_IMPATIENT(TIME, 1, 0.01, 600);

  /** What the size of a fault is. */
  public enum Measure {
    /** The part is broken or whole; there is no size. */
    NONE,
    /** A temperature difference, K. */
    DIFFERENCE,
    /** A temperature difference in time, K/min. */
    DRIFT,
    /** A fraction of 1. */
    SHARE,
    /** A time, s. */
    TIME,
    /** A volume, L. */
    VOLUME,
    /** A whole number of bits. */
    BITS,
    /** A whole number of octets. */
    OCTETS
  }

  private final String key = name().toLowerCase(Locale.ROOT).replace('_', '-');
  private final Measure measure;
  private final double usual;
  private final double least;
  private final double most;

  PartFault() {
    this(NONE, 0, 0, 0);
  }

  PartFault(Measure measure, double usual, double least, double most) {
    this.measure = measure;
    this.usual = usual;
    this.least = least;
    this.most = most;
  }

  /** Name in scenario files, for example {@code control-sensor-open}. */
  public String key() {
    return key;
  }

  /** What the fault's size is. */
  public Measure measure() {
    return measure;
  }

  /** Size unless another is given; 0 for a fault without one. */
  public double usualSize() {
    return usual;
  }

  /** Least size; 0 for a fault without one. */
  public double leastSize() {
    return least;
  }

  /** Greatest size; 0 for a fault without one. */
  public double mostSize() {
    return most;
  }

  /** Whether a size breaks something: within the range and, where the fault has a size, not 0. */
  public boolean allows(double size) {
    return size >= least && size <= most && (size != 0 || measure == NONE);
  }
}
