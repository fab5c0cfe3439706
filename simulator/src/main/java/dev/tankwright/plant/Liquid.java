package dev.tankwright.plant;

/**
 * How much solution stands in the tank and how fast it runs out.
 *
 * <p>Outflow by Torricelli: Q = Cd a √(2 g h), with Cd 0.61 for a sharp-edged opening (from
 * memory).
 */
final class Liquid {
  private static final double DISCHARGE = 0.61;
  private static final double GRAVITY = 9.80665;
  private static final double LITRES_PER_CUBIC_METRE = 1000;
  private static final double LEAK_SHARE = 0.25;

  private final BathProfile profile;
  private final double litresPerSecondPerRootMetre;
  private double litres;

  Liquid(BathProfile profile, double litres) {
    this.profile = profile;
    this.litres = litres;
    double bore = Math.PI / 4 * profile.drainMetres() * profile.drainMetres();
    litresPerSecondPerRootMetre =
        DISCHARGE * bore * Math.sqrt(2 * GRAVITY) * LITRES_PER_CUBIC_METRE;
  }

  /**
   * Lets solution run out.
   *
   * @param opening of the drain, 0–1
   * @param leaking whether a closed drain lets a quarter of its section through
   */
  void drain(double opening, boolean leaking, double seconds) {
    double share = Math.max(opening, leaking ? LEAK_SHARE : 0);
    if (share > 0 && litres > 0) {
      double out = share * litresPerSecondPerRootMetre * Math.sqrt(heightMetres()) * seconds;
      litres = Math.max(0, litres - out);
    }
  }

  void evaporate(double kilograms) {
    litres = Math.max(0, litres - kilograms);
  }

  /** Pours in; what does not fit runs over the brim. Returns the litres that stayed. */
  double pour(double poured) {
    double stayed = Math.min(poured, profile.brimLitres() - litres);
    litres += stayed;
    return stayed;
  }

  double litres() {
    return litres;
  }

  double heightMetres() {
    return litres / LITRES_PER_CUBIC_METRE / profile.surfaceSquareMetres();
  }

  boolean isAboveMinimum() {
    return litres >= profile.minimumLitres();
  }

  boolean isAboveFillMark() {
    return litres >= profile.fillMarkLitres();
  }

  /** Share of the heated wall that is wet, 0–1: it is covered at half of the minimum. */
  double wetShare() {
    return Math.min(1, litres / (0.5 * profile.minimumLitres()));
  }
}
