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
  private boolean maySound;
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

  /** Has everything looked at anew in the next scan, for what is asked for has changed. */
  public void lookAnew() {
    watch.forget();
  }

  /**
   * Looks for what is wrong and latches it; works out anew what is permitted where it may differ.
   */
  public void watch() {
    catchUp();
    flow.pass(ProgramFlow.WATCHED);
  }

  /** Lets time pass in which nothing changes: what was measured says how much. */
  public void catchUp() {
    if (monitors.scan(watch, latch)) {
      permit();
    }
  }

  private void permit() {
    boolean mains = measured.isMains();
    boolean healthy = mains && !latch.isStopping();
    boolean filled = healthy && !monitors.isDry() && measured.isDrainShut() && !driven.drain();
    mayHeat = filled && measured.control().isValid() && measured.cutOff().isValid();
    maySound = filled && measured.isLidClosed();
    mayDrain = healthy;
    closesRelay = mains && !latch.isCutOff();
  }

  /** In what time anything may be found if nothing changes, ms; 0 while something is news. */
  public int changesInMs() {
    return monitors.changesInMs(watch);
  }

  /** True when the cause of a latched fault that switches everything off is there in this scan. */
  public boolean isCausePresent() {
    return monitors.isCausePresent(watch, latch.stopping());
  }

  /** Drives the pins: every one is wanted AND permitted. */
  public void drive(Outputs outputs) {
    boolean heats = wanted.heater && mayHeat;
    boolean sounds = wanted.ultrasound && maySound;
    boolean drains = wanted.drain && mayDrain && !heats && !sounds;
    driven.set(heats, closesRelay, sounds, drains);
    outputs.heaterRelay = heats;
    outputs.cutOffRelay = closesRelay;
    outputs.ultrasoundEnable = sounds;
    outputs.drivePermille = sounds ? wanted.drivePermille : 0;
    outputs.driveFrequencyHz = sounds ? wanted.driveFrequencyHz : 0;
    outputs.drainValveOpen = drains;
    flow.pass(ProgramFlow.DRIVEN);
  }

  /**
   * Gives up: the stages of this scan were not in order, so that nothing they have found is to be
   * relied on. Everything is switched off at once.
   */
  public void giveUp(Outputs outputs) {
    latch.raise(Fault.PROGRAM_FLOW);
    lookAnew();
    driven.set(false, false, false, false);
    outputs.heaterRelay = false;
    outputs.cutOffRelay = false;
    outputs.ultrasoundEnable = false;
    outputs.drivePermille = 0;
    outputs.driveFrequencyHz = 0;
    outputs.drainValveOpen = false;
  }

  /** True while the ultrasound is driven. */
  public boolean isSounding() {
    return driven.ultrasound();
  }

  /** All drives in one word, which differs when any of them differs. */
  public int drives() {
    return driven.word();
  }

  /** True while the heater is driven. */
  public boolean isHeating() {
    return driven.heater();
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    monitors.carry(state);
    driven.carry(state);
    if (state.isRestoring()) {
      watch.forget();
    }
  }
}
