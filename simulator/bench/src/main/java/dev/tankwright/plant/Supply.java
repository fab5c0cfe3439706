package dev.tankwright.plant;

/**
 * Mains voltage, as a share of its nominal value. Power goes with its square. Below half of the
 * nominal voltage mains counts as absent and the generator does not run: common practice, no
 * source.
 */
final class Supply {
  private static final double PRESENT_FROM = 0.5;
  private static final double BROWN_OUT_SHARE = 0.3;

  private final double stepSeconds;
  private final double undisturbed;
  private double share;
  private double brownSeconds;
  private boolean cut;

  /**
   * Makes a supply.
   *
   * @param undisturbed voltage while nothing is wrong, as a share of its nominal value
   */
  Supply(double stepSeconds, double undisturbed) {
    this.stepSeconds = stepSeconds;
    this.undisturbed = undisturbed;
    share = undisturbed;
  }

  void step(BrokenParts broken) {
    if (broken.none()) {
      share = undisturbed;
      brownSeconds = 0;
    } else {
      disturb(broken);
    }
    if (cut) {
      share = 0;
    }
  }

  /** Cuts the mains at once, or gives them back from the next step on. */
  void cut(boolean away) {
    cut = away;
    share = away ? 0 : share;
  }

  private void disturb(BrokenParts broken) {
    share = undisturbed * (1 - broken.size(PartFault.MAINS_SAG));
    if (broken.has(PartFault.MAINS_BROWN_OUTS)) {
      double period = broken.size(PartFault.MAINS_BROWN_OUTS);
      boolean down = brownSeconds < period / 2;
      share = down ? Math.min(share, BROWN_OUT_SHARE) : share;
      brownSeconds += stepSeconds;
      brownSeconds -= brownSeconds >= period ? period : 0;
    } else {
      brownSeconds = 0;
    }
    if (broken.has(PartFault.MAINS_CUT)) {
      share = 0;
    }
  }

  boolean isPresent() {
    return share >= PRESENT_FROM;
  }

  /** Voltage as a share of its nominal value. */
  double share() {
    return share;
  }

  /** What a resistive load takes, as a share of its rated power. */
  double powerShare() {
    return share * share;
  }
}
