package dev.tankwright.rule;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;

/** How phases may follow each other. Stateless. */
final class PhaseRules {
  private static final boolean[] LINES = lines();

  private PhaseRules() {}

  /** True when some line of the table leads from one phase to the other. */
  static boolean isLine(int from, int to) {
    return LINES[from * Phase.count() + to];
  }

  /**
   * The first rule that is broken, or {@code null}.
   *
   * @param barred whether a cause was present before the scan, or service is due
   */
  static Rule broken(ScanMoment m, boolean barred) {
    Phase now = m.out.panel.phase;
    if (now == m.before) {
      return null;
    }
    if (m.before == Phase.LOCKOUT && (m.command != Command.RESET || barred)) {
      return Rule.LOCKOUT_NEEDS_RESET;
    }
    if (now.isRunning() && !m.before.isRunning()) {
      boolean asked =
          (m.before == Phase.STANDBY && m.command == Command.START)
              || (m.before == Phase.PAUSED && m.command == Command.RESUME);
      return asked ? null : Rule.RUNS_ON_COMMAND;
    }
    return null;
  }

  private static boolean[] lines() {
    boolean[] lines = new boolean[Phase.count() * Phase.count()];
    for (Transition line : PhaseTable.lines()) {
      lines[line.from().ordinal() * Phase.count() + line.to().ordinal()] = true;
    }
    return lines;
  }
}
