package dev.tankwright.plant;

/** Something that follows its command after a delay: a relay's contacts, a generator's output. */
final class Switchgear {
  private final int delaySteps;
  private int pendingSteps;
  private boolean on;

  Switchgear(int delaySteps) {
    this.delaySteps = delaySteps;
  }

  boolean follow(boolean command) {
    if (command == on) {
      pendingSteps = 0;
    } else if (++pendingSteps >= delaySteps) {
      on = command;
      pendingSteps = 0;
    }
    return on;
  }

  boolean isOn() {
    return on;
  }
}
