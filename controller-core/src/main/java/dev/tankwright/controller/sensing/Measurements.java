package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.StateWords;

/** What the pins mean, worked out anew at the beginning of every scan. */
public final class Measurements {
  private final ScanClock clock;
  private final Channel control;
  private final Channel cutOff;
  private final Lid lid;
  private boolean minimumWet;
  private boolean fillMarkWet;
  private boolean drainShut;

  /** Makes the measurements of a device before its first scan. */
  public Measurements(DeviceProfile profile) {
    TemperatureTable table = new TemperatureTable(profile);
    clock = new ScanClock(profile);
    control = new Channel(table);
    cutOff = new Channel(table);
    lid = new Lid(profile);
  }

  /** Reads the pins. */
  public void sense(Inputs inputs) {
    clock.sense(inputs.millis);
    control.sense(inputs.controlSensorCounts);
    cutOff.sense(inputs.cutOffSensorCounts);
    lid.sense(inputs.lidMakeContact, inputs.lidBreakContact, clock.dtMs());
    minimumWet = inputs.minimumLevelWet;
    fillMarkWet = inputs.fillMarkWet;
    drainShut = inputs.drainClosedEnd && !inputs.drainOpenEnd;
  }

  /** Time between scans. */
  public ScanClock clock() {
    return clock;
  }

  /** Time since the previous scan, ms. */
  public int dtMs() {
    return clock.dtMs();
  }

  /** Channel of the sensor that regulation uses. */
  public Channel control() {
    return control;
  }

  /** Channel of the second sensor. */
  public Channel cutOff() {
    return cutOff;
  }

  /** The lid. */
  public Lid lid() {
    return lid;
  }

  /** True while the minimum level contact is wet. */
  public boolean isMinimumWet() {
    return minimumWet;
  }

  /** True while the contact at the fill mark is wet. */
  public boolean isFillMarkWet() {
    return fillMarkWet;
  }

  /** True while both end contacts say that the drain is closed; which of two lies is unknown. */
  public boolean isDrainShut() {
    return drainShut;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    clock.carry(state);
    lid.carry(state);
  }

  /** Takes the millisecond counter up where it stood, after a restore. */
  public void resumeClock(int millis) {
    clock.resume(millis);
  }

  /** Takes the millisecond counter up anew, after a restore. */
  public void restartClock() {
    clock.restart();
  }
}
