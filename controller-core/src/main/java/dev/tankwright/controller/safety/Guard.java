package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;

/**
 * Runs the monitors and is the only writer of the heater's, the ultrasound's and the valve's pins:
 * what is wanted AND what is permitted. The permits come from raw inputs and latched faults, never
 * from the sequence's opinion of where it stands.
 */
public final class Guard {
  private final FaultLatch latch;
  private final Monitors monitors;
  private final Measurements measured;
  private final Wanted wanted;
  private final Driven driven = new Driven();
  private final Watch watch;

  /**
   * Makes the guard of a device; nothing is driven.
   *
   * @param measured what the pins mean, anew in every scan
   * @param wanted what each actuator should do, anew in every scan
   */
  public Guard(DeviceProfile profile, FaultLatch latch, Measurements measured, Wanted wanted) {
    this.latch = latch;
    this.measured = measured;
    this.wanted = wanted;
    monitors = new Monitors(profile);
    watch = new Watch(measured, wanted, driven);
  }

  /**
   * Looks at everything and latches what is wrong.
   *
   * @param setpointMilliC temperature that the sequence asks to hold, m°C; 0 for none
   * @param heatingUp true while the sequence waits for the setpoint to be reached
   */
  public void watch(Inputs inputs, int setpointMilliC, boolean heatingUp) {
    if (watch.inputs != inputs) {
      watch.inputs = inputs;
    }
    watch.setpointMilliC = setpointMilliC;
    watch.heatingUp = heatingUp;
    latch.beginScan();
    monitors.scan(watch, latch);
  }

  /** Drives the pins: every one is wanted AND permitted. */
  public void drive(Inputs inputs, Outputs outputs) {
    boolean healthy = inputs.mainsPresent && !latch.isStopping();
    boolean shut = measured.isDrainShut() && !driven.drain;
    boolean filled = healthy && !monitors.isDry() && shut;
    boolean heat = filled && measured.control().isValid() && measured.cutOff().isValid();
    boolean sound = filled && measured.lid().isClosed();
    driven.heater = wanted.heater && heat;
    driven.ultrasound = wanted.ultrasound && sound;
    driven.cutOffRelay = inputs.mainsPresent && !latch.isCutOff();
    driven.drain = wanted.drain && healthy && !driven.heater && !driven.ultrasound;
    write(outputs);
  }

  private void write(Outputs outputs) {
    outputs.heaterRelay = driven.heater;
    outputs.cutOffRelay = driven.cutOffRelay;
    outputs.ultrasoundEnable = driven.ultrasound;
    outputs.drivePermille = driven.ultrasound ? wanted.drivePermille : 0;
    outputs.driveFrequencyHz = driven.ultrasound ? wanted.driveFrequencyHz : 0;
    outputs.drainValveOpen = driven.drain;
  }

  /** True while the ultrasound is driven. */
  public boolean isSounding() {
    return driven.ultrasound;
  }

  /** True while the heater is driven. */
  public boolean isHeating() {
    return driven.heater;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    monitors.carry(state);
    driven.carry(state);
  }
}
