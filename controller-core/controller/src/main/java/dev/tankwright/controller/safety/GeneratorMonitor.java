package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The generator reports a fault, or does not do what its enable says. */
final class GeneratorMonitor extends Monitor {
  GeneratorMonitor(DeviceProfile profile) {
    super(Fault.GENERATOR_FAULT, profile.get(Parameter.GENERATOR_TIME));
  }

  @Override
  boolean holds(Watch w) {
    boolean follows = w.measured.isGeneratorRunning() == w.driven.ultrasound();
    return w.measured.isGeneratorFault() || (!follows && w.measured.isMains());
  }
}
