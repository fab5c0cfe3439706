package dev.tankwright.cli;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.explore.Exploration;
import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.SetResult;
import dev.tankwright.report.exploration.ProvenSets;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import picocli.CommandLine;

/** One exploration as it is shown: first what was proven before, then what is explored now. */
final class ExplorationSession implements AutoCloseable {
  private static final double NANOS_PER_SECOND = 1e9;

  private final Exploration exploration;
  private final Optional<ProvenSets> proven;
  private final LongSupplier nanoseconds;
  private final PrintWriter print;
  private final Console console;

  /**
   * Makes a session.
   *
   * @param proven where proven sets are recorded, closed with the session; {@code null} for nowhere
   * @param nanoseconds a clock, ns
   */
  ExplorationSession(
      Exploration exploration, ProvenSets proven, LongSupplier nanoseconds, CommandLine line) {
    this.exploration = exploration;
    this.proven = Optional.ofNullable(proven);
    this.nanoseconds = nanoseconds;
    print = line.getOut();
    console = new Console(line, false);
  }

  /** The limits with the times that are explored. */
  DeviceProfile shortened() {
    return exploration.shortened();
  }

  /** Explores what was not proven before, and gives back the results of all sets. */
  List<SetResult> explore(List<FaultySet> plans, int threads) {
    List<SetResult> results = new ArrayList<>();
    List<FaultySet> left = new ArrayList<>();
    print.print(ExplorationText.head());
    for (FaultySet plan : plans) {
      Optional<SetResult> known = proven.flatMap(sets -> sets.find(plan.text()));
      known.ifPresentOrElse(results::add, () -> left.add(plan));
      known.ifPresent(result -> print.print(ExplorationText.known(result)));
    }
    print.flush();
    int before = results.size();
    long began = nanoseconds.getAsLong();
    Progress line = console.progress();
    results.addAll(
        exploration.explore(
            left, threads, new ExplorationProgress(line, nanoseconds, left.size(), this::take)));
    double seconds = (nanoseconds.getAsLong() - began) / NANOS_PER_SECOND;
    print.print(ExplorationText.sum(results, before, seconds));
    return results;
  }

  private void take(SetResult result, long seconds) {
    proven.ifPresent(sets -> sets.add(result, seconds));
    print.print(ExplorationText.set(result));
    print.flush();
  }

  @Override
  public void close() {
    proven.ifPresent(ProvenSets::close);
  }
}
