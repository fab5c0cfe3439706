package dev.tankwright.hunt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.hipparchus.optim.ConvergenceChecker;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;

/**
 * Looks once into every space, then searches the most promising ones by CMA-ES (Hansen and
 * Ostermeier, Evolutionary Computation 2001), with a population that grows from restart to restart
 * (Auger and Hansen, CEC 2005; both cited from memory), until the budget is spent.
 */
final class CmaEsSearch {
  // Our choices: a third of a side lets the first generation see most of the cube; a dozen idle
  // generations are a sign of a plateau, of which margins in steps of 10 ms have many.
  private static final double SIGMA = 0.3;
  private static final int IDLE_GENERATIONS = 12;
  private static final int PROMISING = 3;
  private static final int LARGEST_GROWTH = 4;

  private final List<Space> spaces;
  private final SearchBudget ledger;
  private final SplittableRandom random;

  private CmaEsSearch(List<Space> spaces, SearchBudget ledger, SplittableRandom random) {
    this.spaces = spaces;
    this.ledger = ledger;
    this.random = random;
  }

  /** Searches until the budget is spent. */
  static void search(List<Space> spaces, SearchBudget ledger, SplittableRandom random) {
    new CmaEsSearch(spaces, ledger, random).search();
  }

  private void search() {
    List<Evaluation> starts = survey();
    for (int round = 0; ledger.left() > 0; round++) {
      Evaluation start = starts.get(round % Math.min(PROMISING, starts.size()));
      int visits = round / Math.min(PROMISING, starts.size());
      double[] guess = visits == 0 ? start.point() : RandomSearch.point(start.space(), random);
      optimise(start.space(), guess, 1 << Math.min(visits, LARGEST_GROWTH));
    }
  }

  /** One look into each space, in random order, for half of the budget at most; the worst first. */
  private List<Evaluation> survey() {
    List<Space> order = new ArrayList<>(spaces);
    Collections.shuffle(order, new Random(random.nextLong()));
    int looks = spaces.size() == 1 ? 1 : Math.max(1, Math.min(order.size(), ledger.left() / 2));
    List<Evaluation> seen = new ArrayList<>();
    for (Space space : order.subList(0, looks)) {
      seen.add(ledger.evaluate(space, RandomSearch.point(space, random)));
    }
    seen.sort(Comparator.comparingDouble(one -> one.reading().rank()));
    return seen;
  }

  private void optimise(Space space, double[] guess, int growth) {
    int size = guess.length;
    int population = growth * (4 + (int) (3 * Math.log(size)));
    double[] upper = new double[size];
    double[] sigma = new double[size];
    Arrays.fill(upper, 1);
    Arrays.fill(sigma, SIGMA);
    new CMAESOptimizer(
            Integer.MAX_VALUE,
            Double.NEGATIVE_INFINITY,
            true,
            0,
            0,
            new MersenneTwister(random.nextLong()),
            false,
            new Idle())
        .optimize(
            new ObjectiveFunction(point -> ledger.objective(ledger.evaluate(space, point))),
            GoalType.MINIMIZE,
            new InitialGuess(guess),
            new SimpleBounds(new double[size], upper),
            new CMAESOptimizer.Sigma(sigma),
            new CMAESOptimizer.PopulationSize(population),
            MaxEval.unlimited());
  }

  /** Ends a run that has not improved for some generations. */
  private static final class Idle implements ConvergenceChecker<PointValuePair> {
    private double best = Double.POSITIVE_INFINITY;
    private int generations;

    @Override
    public boolean converged(int iteration, PointValuePair previous, PointValuePair current) {
      generations = current.getValue() < best ? 0 : generations + 1;
      best = Math.min(best, current.getValue());
      return generations >= IDLE_GENERATIONS;
    }
  }
}
