package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * Time between two scans from the free-running counter, which may wrap at any moment. A counter
 * that stands still or jumps is recognised; time then passes by at most the longest step allowed,
 * and never backwards.
 */
public final class ScanClock {
  private final int scanMaximumMs;
  private final int stallScans;
  // The counter's last value is a moment, not an elapsed time: it lies outside the captured state.
  private int lastMillis;
  private int stalledScans;
  private boolean jumped;

  ScanClock(DeviceProfile profile) {
    scanMaximumMs = profile.get(Parameter.SCAN_MAXIMUM);
    stallScans = profile.get(Parameter.STALL_SCANS);
  }

  /** Takes the counter and tells how much time has passed, ms. */
  int sense(int millis) {
    int step = millis - lastMillis;
    lastMillis = millis;
    if (step > 0 && step <= scanMaximumMs) {
      stalledScans = 0;
      jumped = false;
      return step;
    }
    jumped = step != 0;
    stalledScans = jumped ? 0 : Math.min(stallScans, stalledScans + 1);
    return jumped ? scanMaximumMs : 0;
  }

  /** True when the counter has stood still for too many scans. */
  public boolean isStalled() {
    return stalledScans >= stallScans;
  }

  /** True when the counter went backwards or jumped ahead in this scan. */
  public boolean hasJumped() {
    return jumped;
  }

  /** True when the counter cannot be trusted in this scan. */
  public boolean isFaulty() {
    return jumped || isStalled();
  }

  void carry(StateWords state) {
    stalledScans = state.carry(stalledScans);
    jumped = state.carry(jumped);
  }

  /** The next scan counts from what stands on the counter now. */
  void takeUp(int millis) {
    lastMillis = millis;
  }
}
