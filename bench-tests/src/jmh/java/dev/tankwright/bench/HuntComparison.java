package dev.tankwright.bench;

import dev.tankwright.hunt.Evaluation;
import dev.tankwright.hunt.Hunt;
import dev.tankwright.hunt.HuntFile;
import dev.tankwright.hunt.HuntResult;
import dev.tankwright.hunt.Method;
import dev.tankwright.hunt.Space;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * Compares the optimiser with random sampling: how many runs each needs to reach the margin that
 * random sampling reaches with its whole budget, in the median of the seeds. What is counted are
 * runs, so the figures do not depend on the machine.
 *
 * <pre>
 * java -cp bench-tests/target/benchmarks.jar dev.tankwright.bench.HuntComparison FILE REQUIREMENT
 *     BUDGET SEEDS [FAULT PHASE]
 * </pre>
 */
public final class HuntComparison {
  private static final long SHIFT_MILLIS = 10_000;

  private HuntComparison() {}

  /** Prints one line for each method. */
  public static void main(String[] args) throws Exception {
    int budget = Integer.parseInt(args[2]);
    long seeds = Long.parseLong(args[3]);
    Optional<String> fault = args.length > 4 ? Optional.of(args[4]) : Optional.empty();
    Optional<String> phase = args.length > 5 ? Optional.of(args[5]) : Optional.empty();
    List<Space> spaces =
        new HuntFile(Path.of(args[0]), args[1], fault, phase, SHIFT_MILLIS).spaces();
    List<HuntResult> random = runs(args[1], spaces, Method.RANDOM, budget, seeds);
    List<HuntResult> cmaEs = runs(args[1], spaces, Method.CMA_ES, budget, seeds);
    double target = median(random.stream().mapToDouble(HuntComparison::least).toArray());
    System.out.printf(
        Locale.ROOT,
        "%s, '%s': %d spaces, %d coordinates, %d runs a search, %d seeds; margin to reach %.4f%n",
        args[0],
        args[1],
        spaces.size(),
        spaces.get(0).coordinates().size(),
        budget,
        seeds,
        target);
    print(random, target, budget);
    print(cmaEs, target, budget);
  }

  private static List<HuntResult> runs(
      String requirement, List<Space> spaces, Method method, int budget, long seeds) {
    return LongStream.rangeClosed(1, seeds)
        .parallel()
        .mapToObj(
            seed -> new Hunt(requirement, spaces, method, budget, seed).run((spent, least) -> {}))
        .toList();
  }

  private static void print(List<HuntResult> results, double target, int budget) {
    double[] last = results.stream().mapToDouble(HuntComparison::least).sorted().toArray();
    double[] needed =
        results.stream().mapToDouble(result -> needed(result, target, budget)).sorted().toArray();
    long reached = Arrays.stream(needed).filter(runs -> runs <= budget).count();
    System.out.printf(
        Locale.ROOT,
        "  %s: least margin %.4f (%.4f to %.4f); reached by %d of %d; runs needed %s (%s to %s)%n",
        results.get(0).method().key(),
        median(last),
        last[0],
        last[last.length - 1],
        reached,
        results.size(),
        shown(median(needed), budget),
        shown(needed[0], budget),
        shown(needed[needed.length - 1], budget));
  }

  private static String shown(double runs, int budget) {
    return runs > budget ? "over " + budget : String.format(Locale.ROOT, "%.0f", runs);
  }

  private static double least(HuntResult result) {
    return result.least().map(e -> e.reading().rank()).orElse(Double.POSITIVE_INFINITY);
  }

  /** Runs until the margin was reached; one more than the budget when it never was. */
  private static double needed(HuntResult result, double target, int budget) {
    return result.evaluations().stream()
        .filter(one -> one.reading().rank() <= target)
        .mapToInt(Evaluation::number)
        .findFirst()
        .orElse(budget + 1);
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
