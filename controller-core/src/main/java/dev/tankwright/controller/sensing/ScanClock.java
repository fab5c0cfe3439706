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
  // The counter's last value is a moment, not an elapsed time: it lies outside the captured state,
  // and the first scan after a restore counts as 0 ms.
  private int lastMillis;
  private boolean started;
  private int stalledScans;
  private int dtMs;
  private boolean jumped;

  ScanClock(DeviceProfile profile) {
    scanMaximumMs = profile.get(Parameter.SCAN_MAXIMUM);
    stallScans = profile.get(Parameter.STALL_SCANS);
  }

  void sense(int millis) {
    int step = started ? millis - lastMillis : 0;
    jumped = step < 0 || step > scanMaximumMs;
    stalledScans = step == 0 ? Math.min(stallScans, stalledScans + 1) : 0;
    dtMs = jumped ? scanMaximumMs : step;
    lastMillis = millis;
    started = true;
  }

  /** Time since the previous scan, ms, 0 to the longest step allowed. */
  public int dtMs() {
    return dtMs;
  }

  /** True when the counter has stood still for too many scans. */
  public boolean isStalled() {
    return stalledScans >= stallScans;
  }

  /** True when the counter went backwards or jumped ahead in this scan. */
  public boolean hasJumped() {
    return jumped;
  }

  void carry(StateWords state) {
    stalledScans = state.carry(stalledScans);
  }

  /** Takes the counter up where it stood, so that the next scan counts from there. */
  void resume(int millis) {
    started = true;
    lastMillis = millis;
  }

  /** Takes the counter up anew: the next scan counts as 0 ms. */
  void restart() {
    started = false;
  }
}
