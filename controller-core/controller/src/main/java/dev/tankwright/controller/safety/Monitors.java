package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Measurements;

/**
 * All monitors. Each says whether its condition is there; the answers are the bits of one word,
 * whose timers run only while one of them is set. Most conditions depend on nothing but pins,
 * readings, drives and setpoint: they are looked at when one of these has changed, and after the
 * end of every window of time in any case. The list serves what is rare; what a scan calls are
 * fields of their own classes, so that it calls each of them directly: a scan must cost
 * nanoseconds.
 */
final class Monitors {
  private final ReadingMonitors readings;
  private final PinMonitors pins;
  private final TimeMonitors times;
  private final Monitor[] all;
  private final HoldTimers timers = new HoldTimers();
  private final Window window;
  private int standing;
  private boolean busy;

  Monitors(DeviceProfile profile, Measurements measured) {
    readings = new ReadingMonitors(profile, measured.control(), measured.cutOff());
    pins = new PinMonitors(profile);
    times = new TimeMonitors(profile, measured.control());
    window = new Window(profile);
    all = concat(readings.list(), pins.list(), times.list());
    for (Monitor monitor : all) {
      timers.limit(monitor.fault(), monitor.holdMs());
    }
  }

  /**
   * Looks for what is wrong and latches it.
   *
   * @return false in a scan in which nothing can be otherwise than in the scan before: nothing is
   *     news, and nothing that keeps time is under way
   */
  boolean scan(Watch w, FaultLatch latch) {
    int dtMs = w.dtMs();
    boolean over = window.isOver(dtMs);
    if (!over && !busy && !w.hasNews()) {
      return false;
    }
    look(w, over);
    int expired = timers.run(standing | times.scan(w), dtMs);
    if (expired != 0) {
      latch.raiseAll(expired);
    }
    busy = timers.isRunning() || times.isBusy(w);
    return true;
  }

  /** In what time anything may be found if nothing changes, ms; 0 while something is news. */
  int changesInMs(Watch w) {
    int timed = Math.min(timers.expiresInMs(), times.changesInMs(w));
    return w.hasDrivenNews() ? 0 : Math.min(window.endsInMs(), timed);
  }

  private void look(Watch w, boolean windowOver) {
    if (w.hasNews()) {
      w.takeNews();
      standing = readings.look(w) | pins.look(w);
    }
    if (windowOver) {
      readings.beginWindow();
      w.forget();
    }
  }

  /** True when the cause of one of the given faults is there. */
  boolean isCausePresent(Watch w, int faults) {
    for (Monitor monitor : all) {
      if ((monitor.fault().bit() & faults) != 0 && monitor.delaysReset(w)) {
        return true;
      }
    }
    return false;
  }

  /** True when the level has been low for its time, whether or not anything is wanted. */
  boolean isDry() {
    return times.isDry();
  }

  void carry(StateWords state) {
    timers.carry(state);
    window.carry(state);
    busy |= state.isRestoring();
    readings.carry(state);
    times.carry(state);
  }

  private static Monitor[] concat(Monitor[]... lists) {
    int count = 0;
    for (Monitor[] list : lists) {
      count += list.length;
    }
    Monitor[] joined = new Monitor[count];
    int at = 0;
    for (Monitor[] list : lists) {
      for (Monitor monitor : list) {
        joined[at++] = monitor;
      }
    }
    return joined;
  }
}
