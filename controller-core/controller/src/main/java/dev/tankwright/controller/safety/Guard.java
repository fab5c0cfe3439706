package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;

/**
 * Runs the monitors and is the only writer of the heater's, the ultrasound's and the valve's pins:
 * what is wanted AND what is permitted. The permits come from raw inputs and latched faults, never
 * from the sequence's opinion of where it stands.
 */
public final class Guard {
  private final FaultLatch latch;
  private final ProgramFlow flow;
  private final Monitors monitors;
  private final Measurements measured;
  private final Wanted wanted;
  private final Driven driven = new Driven();
  private final Watch watch;
  private boolean mayHeat;
  private boolean maySonicate;
  private boolean mayDrain;
  private boolean closesRelay;

  /**
   * Makes the guard of a device; nothing is driven.
   *
   * @param measured what the pins mean, anew in every scan
   * @param demand what the sequence asks for, anew in every scan
   * @param wanted what each actuator should do, anew in every scan
   */
  public Guard(
      DeviceProfile profile,
      FaultLatch latch,
      Measurements measured,
      Demand demand,
      Wanted wanted,
      ProgramFlow flow) {
    this.flow = flow;
    this.latch = latch;
    this.measured = measured;
    this.wanted = wanted;
    monitors = new Monitors(profile, measured);
    watch = new Watch(measured, demand, wanted, driven);
  }

  /** Looks for what is wrong, latches it, and works out what is permitted. */
  public void watch() {
    monitors.scan(watch, latch);
    permit();
    flow.pass(ProgramFlow.WATCHED);
  }

  private void permit() {
    boolean mains = measured.isMains();
    boolean healthy = mains && !latch.isStopping();
    boolean filled = healthy && !monitors.isDry() && measured.isDrainShut() && !driven.drain();
    mayHeat = filled && measured.control().isValid() && measured.cutOff().isValid();
    maySonicate = filled && measured.isLidClosed();
    mayDrain = healthy;
    closesRelay = mains && !latch.isCutOff();
  }

  /** True when the cause of a latched fault that switches everything off is there in this scan. */
  public boolean isCausePresent() {
    return monitors.isCausePresent(watch, latch.stopping());
  }

  /** Drives the pins: every one is wanted AND permitted. */
  public void drive(Outputs outputs) {
    boolean heats = wanted.heater && mayHeat;
    boolean sonicates = wanted.ultrasound && maySonicate;
    boolean drains = wanted.drain && mayDrain && !heats && !sonicates;
    driven.set(heats, closesRelay, sonicates, drains);
    outputs.heaterRelay = heats;
    outputs.cutOffRelay = closesRelay;
    outputs.ultrasoundEnable = sonicates;
    outputs.drivePermille = sonicates ? wanted.drivePermille : 0;
    outputs.driveFrequencyHz = sonicates ? wanted.driveFrequencyHz : 0;
    outputs.drainValveOpen = drains;
    flow.pass(ProgramFlow.DRIVEN);
  }

  /**
   * Switches everything off at once: the stages of this scan were out of order, so nothing they
   * found can be relied on.
   */
  public void switchOff(Outputs outputs) {
    latch.raise(Fault.PROGRAM_FLOW);
    driven.set(false, false, false, false);
    outputs.heaterRelay = false;
    outputs.cutOffRelay = false;
    outputs.ultrasoundEnable = false;
    outputs.drivePermille = 0;
    outputs.driveFrequencyHz = 0;
    outputs.drainValveOpen = false;
  }

  /** True while the ultrasound is driven. */
  public boolean isSonicating() {
    return driven.ultrasound();
  }

  /** True while the heater is driven. */
  public boolean isHeating() {
    return driven.heater();
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    monitors.carry(state);
    driven.carry(state);
  }
}
