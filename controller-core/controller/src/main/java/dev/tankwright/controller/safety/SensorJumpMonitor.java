package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * A sensor reads a change that no bath makes: more than its limit within one window of time. What
 * is read when a broken circuit closes again is taken as it is.
 */
final class SensorJumpMonitor {
  private static final int UNKNOWN = Integer.MIN_VALUE;

  private final Channel channel;
  private final int limitMilliK;
  private int fromMilliC = UNKNOWN;

  SensorJumpMonitor(Channel channel, DeviceProfile profile) {
    this.channel = channel;
    limitMilliK = profile.get(Parameter.JUMP_LIMIT);
  }

  /** Begins a window of time: what is read now is where a jump would start. */
  void beginWindow() {
    fromMilliC = channel.isValid() ? channel.milliC() : UNKNOWN;
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan() {
    if (fromMilliC == UNKNOWN || !channel.isValid()) {
      beginWindow();
      return false;
    }
    return isFar();
  }

  /** True while the reading is farther from the start of the window than it may be. */
  boolean isFar() {
    return fromMilliC != UNKNOWN
        && channel.isValid()
        && Math.abs(channel.milliC() - fromMilliC) > limitMilliK;
  }

  void carry(StateWords state) {
    fromMilliC = state.carry(fromMilliC);
  }
}
