package dev.tankwright.plant.effects;

/**
 * Three pieces of household foil hung in the bath. Each takes up a dose that grows with the square
 * of activity: half the activity marks a foil far less than half as much. Nothing shows before an
 * incubation dose (erosion has an incubation time: Dular 2013), then pits appear, and holes where
 * the pits lie close. The square and the rates are estimates, and so is how unevenly the three
 * places see the field.
 */
public final class Foil {
  /** How many pieces hang in the bath: common practice, no source. */
  public static final int PIECES = 3;

  private static final double[] FIELD = {1.0, 0.85, 0.7};
  private static final double PITS_PER_HOLE = 12;

  private final EffectRates rates;
  private final double[] dose = new double[PIECES];
  private boolean hung;

  /** Makes foil that hangs outside the bath. */
  public Foil(EffectRates rates) {
    this.rates = rates;
  }

  /** Hangs three fresh pieces. */
  public void hang() {
    hung = true;
    for (int i = 0; i < PIECES; i++) {
      dose[i] = 0;
    }
  }

  /** Lets time pass. */
  public void step(double activity, double seconds) {
    if (!hung) {
      return;
    }
    for (int i = 0; i < PIECES; i++) {
      double local = activity * FIELD[i];
      dose[i] += local * local * seconds;
    }
  }

  /** Pits on a piece, a whole number. */
  public double pits(int piece) {
    return Math.floor(
        Math.max(0, dose[piece] - rates.foilIncubationSeconds()) * rates.pitsPerSecond());
  }

  /** Pits on the piece that shows most. */
  public double mostPits() {
    double most = 0;
    for (int i = 0; i < PIECES; i++) {
      most = Math.max(most, pits(i));
    }
    return most;
  }

  /** Holes on the piece that shows most. */
  public double mostHoles() {
    return Math.floor(mostPits() / PITS_PER_HOLE);
  }
}
