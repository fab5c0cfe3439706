package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Pins;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.StateWords;

/** What the pins mean, worked out at the beginning of every scan. */
public final class Measurements {
  private static final int LID = Pins.LID_MAKE | Pins.LID_BREAK;
  private static final int DRAIN = Pins.DRAIN_OPEN | Pins.DRAIN_CLOSED;

  private final ProgramFlow flow;
  private final TemperatureTable table;
  private final ScanClock clock;
  private final Channel control;
  private final Channel cutOff;
  private final Lid lid;
  private final Keys keys = new Keys();
  private int pins;
  private int dtMs;
  private boolean lidClosed;
  private boolean begun;

  /** Makes the measurements of a device before its first scan. */
  public Measurements(DeviceProfile profile, ProgramFlow flow) {
    this.flow = flow;
    table = new TemperatureTable(profile);
    clock = new ScanClock(profile);
    control = new Channel(table);
    cutOff = new Channel(table);
    lid = new Lid(profile);
  }

  /** Reads the pins. */
  public void sense(Inputs inputs) {
    if (!begun) {
      takeUp(inputs);
    }
    dtMs = clock.sense(inputs.millis);
    keys.sense(inputs);
    pins = inputs.pins();
    control.sense(inputs.controlSensorCounts);
    cutOff.sense(inputs.cutOffSensorCounts);
    lidClosed = lid.isClosed((pins & LID) == Pins.LID_MAKE, dtMs);
    flow.pass(ProgramFlow.SENSED);
  }

  /** Time between scans. */
  public ScanClock clock() {
    return clock;
  }

  /** Time since the previous scan, ms, 0 to the longest step allowed. */
  public int dtMs() {
    return dtMs;
  }

  /** Channel of the sensor that regulation uses. */
  public Channel control() {
    return control;
  }

  /** Channel of the second sensor. */
  public Channel cutOff() {
    return cutOff;
  }

  /** The commands of the operator. */
  public Keys keys() {
    return keys;
  }

  /** True when both lid contacts have said for the filter's time that the lid is closed. */
  public boolean isLidClosed() {
    return lidClosed;
  }

  /** True when the two lid contacts contradict each other. */
  public boolean isLidContradictory() {
    int contacts = pins & LID;
    return contacts == LID || contacts == 0;
  }

  /** Changes a word of the table, as failing memory would; for tests, that it is found. */
  public void damageTable() {
    table.damage();
  }

  /** Verifies a part of the table that turns readings into temperatures. */
  public void verifyTable() {
    table.verify();
  }

  /** True when the table that turns readings into temperatures is not what it was at power-up. */
  public boolean isTableWrong() {
    return table.isWrong();
  }

  /** True while the minimum level contact is wet. */
  public boolean isMinimumWet() {
    return (pins & Pins.MINIMUM_WET) != 0;
  }

  /** True while the contact at the fill mark is wet. */
  public boolean isFillMarkWet() {
    return (pins & Pins.FILL_MARK_WET) != 0;
  }

  /** True while both end contacts say that the drain is closed; which of two lies is unknown. */
  public boolean isDrainShut() {
    return (pins & DRAIN) == Pins.DRAIN_CLOSED;
  }

  /** True while both end contacts say that the drain is open. */
  public boolean isDrainOpen() {
    return (pins & DRAIN) == Pins.DRAIN_OPEN;
  }

  /** True while current flows through the heater. */
  public boolean isHeaterCurrent() {
    return (pins & Pins.HEATER_CURRENT) != 0;
  }

  /** True while the generator reports that it drives the transducers. */
  public boolean isGeneratorRunning() {
    return (pins & Pins.GENERATOR_RUNNING) != 0;
  }

  /** True while the generator reports a fault of its own. */
  public boolean isGeneratorFault() {
    return (pins & Pins.GENERATOR_FAULT) != 0;
  }

  /** True while mains is present. */
  public boolean isMains() {
    return (pins & Pins.MAINS) != 0;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    clock.carry(state);
    lid.carry(state);
    control.carry(state);
    cutOff.carry(state);
  }

  /**
   * Takes up what stands on the pins at power-up or after a restore: time counts from it, and its
   * command is not new.
   */
  public void takeUp(Inputs standing) {
    clock.takeUp(standing.millis);
    keys.takeUp(standing);
    begun = true;
  }
}
