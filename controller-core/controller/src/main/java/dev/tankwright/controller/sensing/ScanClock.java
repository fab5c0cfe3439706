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

  // True while a step of the counter was none, or none that can be.
  private boolean astray;

  ScanClock(DeviceProfile profile) {
    scanMaximumMs = profile.get(Parameter.SCAN_MAXIMUM);
    stallScans = profile.get(Parameter.STALL_SCANS);
  }

  /** Takes the counter and tells how much time has passed, ms. */
  int sense(int millis) {
    int step = millis - lastMillis;
    lastMillis = millis;
    if (step > 0 && step <= scanMaximumMs) {
      if (astray) {
        settle();
      }
      return step;
    }
    return suspect(step);
  }

  /** The step since the last scan if it may be believed, ms; else 0. */
  int goodStepMs(int millis) {
    int step = millis - lastMillis;
    return step > 0 && step <= scanMaximumMs && !astray ? step : 0;
  }

  /** Takes a step that may be believed. */
  void pass(int stepMs) {
    lastMillis += stepMs;
  }

  private void settle() {
    stalledScans = 0;
    jumped = false;
    astray = false;
  }

  private int suspect(int step) {
    jumped = step != 0;
    stalledScans = jumped ? 0 : Math.min(stallScans, stalledScans + 1);
    astray = true;
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
  public boolean isAstray() {
    return astray && (jumped || isStalled());
  }

  void carry(StateWords state) {
    stalledScans = state.carry(stalledScans);
    jumped = state.carry(jumped);
    astray = jumped || stalledScans > 0;
  }

  /** The next scan counts from what stands on the counter now. */
  void takeUp(int millis) {
    lastMillis = millis;
  }
}
