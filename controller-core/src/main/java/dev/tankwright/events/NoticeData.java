package dev.tankwright.events;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.sequence.CycleTally;
import java.util.Optional;

/** What an event says, from the two numbers of its notice: words and units instead of ordinals. */
final class NoticeData {
  private static final Programme[] PROGRAMMES = Programme.values();
  private static final Command[] COMMANDS = Command.values();
  private static final FoilVerdict[] VERDICTS = FoilVerdict.values();

  private final CycleTally tally;
  private final CycleRecorder recorder;

  NoticeData(CycleTally tally, CycleRecorder recorder) {
    this.tally = tally;
    this.recorder = recorder;
  }

  Document of(NoticeKind kind, int first, int second, LoadReference reference) {
    return switch (kind) {
      case PHASE_CHANGED -> phaseChanged(Phase.of(first), Phase.of(second));
      case CYCLE_STARTED -> started(PROGRAMMES[first], second, reference);
      case CYCLE_PAUSED -> paused(first, Phase.of(second));
      case CYCLE_RESUMED -> cycle().word("phase", Phase.of(first)).build();
      case CYCLE_COMPLETED -> cycle().build();
      case CYCLE_STOPPED -> stopped(first);
      case CYCLE_INTERRUPTED -> interrupted();
      case FAULT_RAISED, FAULT_CLEARED -> fault(Fault.of(first));
      case COMMAND_REFUSED -> refused(COMMANDS[first], Refusal.of(second));
      case SOLUTION_FILLED, SOLUTION_DEGASSED, SOLUTION_DRAINED -> Document.EMPTY;
      case SOLUTION_DUE, DRAIN_DUE, FOIL_DUE -> Document.EMPTY;
      case FOIL_CHECKED -> cycle().word("verdict", VERDICTS[first]).build();
      case NOTICES_LOST -> Document.builder().number("missing", first).build();
    };
  }

  /** What ended a cycle, from the first number of the notice that says so. */
  static Optional<Cause> cause(Outcome outcome, int first) {
    return switch (outcome) {
      case COMPLETED -> Optional.empty();
      case STOPPED -> Optional.of(first == 0 ? Cause.OPERATOR : Cause.PAUSE_LIMIT);
      case INTERRUPTED -> Optional.of(Cause.FAULT);
    };
  }

  private Document paused(int first, Phase held) {
    Cause cause =
        switch (first) {
          case 1 -> Cause.LID;
          case 2 -> Cause.MAINS;
          default -> Cause.OPERATOR;
        };
    return cycle().word("cause", cause).word("phase", held).build();
  }

  private Document.Builder cycle() {
    return Document.builder().number("cycle", tally.number());
  }

  private Document started(Programme programme, int setpointMilliC, LoadReference reference) {
    return cycle()
        .word("programme", programme)
        .thousandths("setpointCelsius", setpointMilliC)
        .textUnlessEmpty("operator", reference.operator())
        .textUnlessEmpty("load", reference.load())
        .build();
  }

  private Document stopped(int first) {
    Document.Builder document = cycle();
    cause(Outcome.STOPPED, first).ifPresent(cause -> document.word("cause", cause));
    return document.build();
  }

  private Document interrupted() {
    return cycle().word("cause", Cause.FAULT).words("faults", recorder.faults()).build();
  }

  private static Document phaseChanged(Phase from, Phase to) {
    return Document.builder().word("from", from).word("to", to).build();
  }

  private static Document fault(Fault fault) {
    return Document.builder()
        .word("fault", fault)
        .text("requirement", fault.requirement())
        .word("severity", fault.severity())
        .word("clearRule", fault.clearRule())
        .build();
  }

  private static Document refused(Command command, Refusal refusal) {
    return Document.builder().word("command", command).word("refusal", refusal).build();
  }
}
