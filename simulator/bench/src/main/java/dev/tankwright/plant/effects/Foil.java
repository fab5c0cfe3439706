package dev.tankwright.plant.effects;

/**
 * Three pieces of household foil hung in the bath. Each takes up a dose of activity; nothing shows
 * before an incubation dose (erosion has an incubation time: Dular 2013), then pits appear, and
 * holes where the pits lie close. The rates are estimates, and so are the least activity that marks
 * at all and how unevenly the three places see the field.
 */
public final class Foil {
  /** How many pieces hang in the bath: common practice, no source. */
  public static final int PIECES = 3;

  private static final double[] FIELD = {1.0, 0.85, 0.7};
  private static final double PITS_PER_HOLE = 12;
  private static final double WEAKEST = 0.5;

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

  /** Lets time pass. Below a least activity no bubble collapses hard enough to mark a foil. */
  public void step(double activity, double seconds) {
    if (!hung) {
      return;
    }
    for (int i = 0; i < PIECES; i++) {
      double local = activity * FIELD[i];
      dose[i] += local > WEAKEST ? local * seconds : 0;
    }
  }

  /** Pits on a piece. */
  public double pits(int piece) {
    return Math.max(0, dose[piece] - rates.foilIncubationSeconds()) * rates.pitsPerSecond();
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
