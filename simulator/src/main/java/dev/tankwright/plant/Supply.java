package dev.tankwright.plant;

/** Mains voltage, as a share of its nominal value. Power goes with its square. */
final class Supply {
  private double share = 1;

  void step(Breakages broken) {
    share = broken.has(PartFault.MAINS_CUT) ? 0 : 1;
  }

  boolean isPresent() {
    return share > 0;
  }

  /** What a resistive load takes, as a share of its rated power. */
  double powerShare() {
    return share * share;
  }
}
