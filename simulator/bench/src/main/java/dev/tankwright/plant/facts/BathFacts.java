package dev.tankwright.plant.facts;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.WallProtection;
import dev.tankwright.plant.bath.Bath;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What follows from one profile. Everything is found by simulating the bath itself in a room of 21
 * °C and 50 % humidity, filled to its mark, at nominal mains, without load and without controller.
 *
 * @param profile the bath
 * @param lidOn heating from 15 °C with the lid on, solution
 * @param lidOff heating from 15 °C with the lid off, solution
 * @param dryWall heated wall of an empty tank under full heat, from 20 °C, with nothing to stop it
 * @param facts the table, in the order in which it is shown
 */
public record BathFacts(
    BathProfile profile, Curve lidOn, Curve lidOff, Curve dryWall, List<Fact> facts) {

  /** Solution from the tap, °C. */
  public static final double COLD = 15;

  /** Temperatures of the table, °C. */
  public static final double WARM = 40;

  /** The hottest setpoint of the trade, °C. */
  public static final double HOT = 60;

  /** Share of the filling that counts as empty: the last film drains without end. */
  public static final double EMPTY_SHARE = 0.01;

  private static final double DRY_START = 20;
  private static final double LONGEST_SECONDS = 8 * 3600;
  private static final double CURVE_STEP = 10;
  private static final double DRAIN_LONGEST = 4 * 3600;

  /** Keeps its own copy of the list. */
  public BathFacts {
    facts = List.copyOf(facts);
  }

  /** Finds everything; takes a few seconds. */
  public static BathFacts of(BathProfile profile) {
    Curve on = heating(profile, false);
    Curve off = heating(profile, true);
    Curve dry = dryWall(profile);
    List<Fact> facts = new ArrayList<>(FactTable.heating(on, off));
    facts.addAll(FactTable.losses(profile));
    facts.addAll(FactTable.flow(profile, drainSeconds(profile, DRY_START)));
    facts.addAll(FactTable.dry(dry));
    facts.addAll(FactTable.powers(profile));
    return new BathFacts(profile, on, off, dry, facts);
  }

  private static Curve heating(BathProfile profile, boolean lidOff) {
    PhysicsRun trial =
        new PhysicsRun(profile, profile.levels().fillMarkLitres(), COLD).lidOff(lidOff);
    return curve(trial.fullHeat(), CURVE_STEP, HOT, LONGEST_SECONDS, Bath::liquidCelsius);
  }

  private static Curve dryWall(BathProfile profile) {
    PhysicsRun trial = new PhysicsRun(profile, 0, DRY_START).fullHeat();
    return curve(trial, 1, WallProtection.FUSE_CELSIUS, LONGEST_SECONDS, Bath::wallCelsius);
  }

  private static Curve curve(
      PhysicsRun trial, double step, double until, double longest, ToDoubleFunction<Bath> seen) {
    List<Double> samples = new ArrayList<>();
    samples.add(seen.applyAsDouble(trial.bath()));
    while (samples.get(samples.size() - 1) < until && samples.size() * step <= longest) {
      trial.run(step);
      samples.add(seen.applyAsDouble(trial.bath()));
    }
    return new Curve(step, samples);
  }

  /** Time from the fill mark until {@link #EMPTY_SHARE} is left, s. */
  public static double drainSeconds(BathProfile profile, double celsius) {
    double mark = profile.levels().fillMarkLitres();
    PhysicsRun trial = new PhysicsRun(profile, mark, celsius);
    trial.around().drainOpening = 1;
    double seconds = 0;
    while (trial.bath().litres() > mark * EMPTY_SHARE && seconds < DRAIN_LONGEST) {
      trial.run(Bath.STEP_SECONDS);
      seconds += Bath.STEP_SECONDS;
    }
    return seconds < DRAIN_LONGEST ? seconds : Double.POSITIVE_INFINITY;
  }
}
