package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;

/**
 * Keeps the solution warm from the completion of a cycle to the next, where the profile asks for
 * it, and for its time at most. It goes on while the lid is open to change the load: so closing the
 * lid restarts nothing. It ends when the operator stops it or begins anything else, and with loss
 * of mains or a fault; then nothing but another completed cycle begins it again.
 */
final class KeepWarm {
  private final Dues dues;
  private final boolean offered;
  private final HoldTimer lasting;
  private int setpointMilliC;

  KeepWarm(DeviceProfile profile, Dues dues) {
    this.dues = dues;
    offered = profile.get(Parameter.KEEP_WARM) == 1;
    lasting = new HoldTimer(profile.get(Parameter.KEEP_WARM_MAXIMUM));
  }

  void begin(int milliC) {
    if (offered) {
      setpointMilliC = milliC;
      dues.set(Dues.KEEPING_WARM);
    }
  }

  void end() {
    setpointMilliC = 0;
    lasting.reset();
    dues.clear(Dues.KEEPING_WARM);
  }

  /** Lets time pass: ends after the longest time, or when mains is lost. */
  void run(boolean mains, int dtMs) {
    if (isOn() && (!mains || lasting.run(true, dtMs))) {
      end();
    }
  }

  boolean isOn() {
    return setpointMilliC != 0;
  }

  /** Temperature to hold, m°C; 0 while nothing is kept warm. */
  int setpointMilliC() {
    return setpointMilliC;
  }

  /** True in the phases in which the solution may be kept warm. */
  static boolean isFor(Phase phase) {
    return phase == Phase.COMPLETE || phase == Phase.STANDBY;
  }

  void carry(StateWords state) {
    setpointMilliC = state.carry(setpointMilliC);
    lasting.carry(state);
  }
}
