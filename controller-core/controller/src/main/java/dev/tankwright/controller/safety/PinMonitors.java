package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;

/**
 * The monitors of contacts, feedbacks and memory: do they agree with each other, and do the
 * actuators do what they are told. None of them keeps time by itself.
 */
final class PinMonitors {
  private final MemoryMonitor memory = new MemoryMonitor();
  private final LidContradictionMonitor lid;
  private final LevelContradictionMonitor level;
  private final HeaterWeldedMonitor heaterWelded;
  private final HeaterCurrentMonitor heaterCurrent;
  private final GeneratorMonitor generator;
  private final DrainBlockedMonitor drainBlocked;
  private final ValveMonitor valve;

  PinMonitors(DeviceProfile profile) {
    lid = new LidContradictionMonitor(profile);
    level = new LevelContradictionMonitor(profile);
    heaterWelded = new HeaterWeldedMonitor(profile);
    heaterCurrent = new HeaterCurrentMonitor(profile);
    generator = new GeneratorMonitor(profile);
    drainBlocked = new DrainBlockedMonitor(profile);
    valve = new ValveMonitor(profile);
  }

  Monitor[] list() {
    return new Monitor[] {
      memory, lid, level, heaterWelded, heaterCurrent, generator, drainBlocked, valve
    };
  }

  /** The conditions as they stand, one bit each. */
  int look(Watch w) {
    return memory.bit(memory.holds(w))
        | lid.bit(lid.holds(w))
        | level.bit(level.holds(w))
        | heaterWelded.bit(heaterWelded.holds(w))
        | heaterCurrent.bit(heaterCurrent.holds(w))
        | generator.bit(generator.holds(w))
        | drainBlocked.bit(drainBlocked.holds(w))
        | valve.bit(valve.holds(w));
  }
}
