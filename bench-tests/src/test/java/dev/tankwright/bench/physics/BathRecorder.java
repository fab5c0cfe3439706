package dev.tankwright.bench.physics;

import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.bath.BathObserver;
import dev.tankwright.plant.bath.BathState;
import dev.tankwright.plant.bath.Surroundings;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes down what acted on a bath, as segments over which it was constant, what was poured or
 * taken between them, and how the bath stood at the end of each.
 */
final class BathRecorder implements BathObserver {
  private static final int LONGEST_STEPS = 600;

  /** A stretch of constant surroundings. */
  static final class Segment {
    private final double seconds;
    private final Surroundings acting;
    private final double[] jump;
    private final double[] end;

    private Segment(double seconds, Surroundings acting, double[] jump, double[] end) {
      this.seconds = seconds;
      this.acting = acting;
      this.jump = jump;
      this.end = end;
    }

    /** How long, s. */
    double seconds() {
      return seconds;
    }

    /** What acted. */
    Surroundings acting() {
      return acting;
    }

    /** What was added to a quantity of the state before it. */
    double jump(int quantity) {
      return jump[quantity];
    }

    /** How the bath stood after it. */
    double[] end() {
      return end.clone();
    }
  }

  private final List<Segment> segments = new ArrayList<>();
  private final double[] first;
  private double[] last;
  private double[] jump = new double[BathState.SIZE];
  private Surroundings acting;
  private int steps;

  BathRecorder(double[] first) {
    this.first = first.clone();
    last = first.clone();
  }

  @Override
  public void stepped(Surroundings surroundings, double[] state) {
    if (acting == null || !same(acting, surroundings) || steps == LONGEST_STEPS) {
      close();
      acting = copy(surroundings);
    }
    steps++;
    last = state.clone();
  }

  @Override
  public void jumped(double[] state) {
    close();
    for (int i = 0; i < jump.length; i++) {
      jump[i] += state[i] - last[i];
    }
    last = state.clone();
  }

  /** How the bath stood at first. */
  double[] first() {
    return first.clone();
  }

  /** Everything up to now. */
  List<Segment> segments() {
    close();
    return List.copyOf(segments);
  }

  private void close() {
    if (steps > 0) {
      segments.add(new Segment(steps * Bath.STEP_SECONDS, acting, jump, last));
      jump = new double[BathState.SIZE];
      steps = 0;
      acting = null;
    }
  }

  private static boolean same(Surroundings a, Surroundings b) {
    return a.heaterWatts == b.heaterWatts
        && a.soundWatts == b.soundWatts
        && a.transducerWatts == b.transducerWatts
        && a.driveShare == b.driveShare
        && a.drainOpening == b.drainOpening
        && a.lidOff == b.lidOff
        && a.loadIn == b.loadIn
        && a.roomCelsius == b.roomCelsius
        && a.roomHumidity == b.roomHumidity;
  }

  private static Surroundings copy(Surroundings u) {
    Surroundings copy = new Surroundings();
    copy.heaterWatts = u.heaterWatts;
    copy.soundWatts = u.soundWatts;
    copy.transducerWatts = u.transducerWatts;
    copy.driveShare = u.driveShare;
    copy.drainOpening = u.drainOpening;
    copy.lidOff = u.lidOff;
    copy.loadIn = u.loadIn;
    copy.roomCelsius = u.roomCelsius;
    copy.roomHumidity = u.roomHumidity;
    return copy;
  }
}
