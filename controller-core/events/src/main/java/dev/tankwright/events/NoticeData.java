package dev.tankwright.events;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.CycleCause;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.sequence.CycleTally;
import java.time.Instant;

/** What an event says, from the two numbers of its notice: words and units instead of ordinals. */
final class NoticeData {
  private static final FoilVerdict[] VERDICTS = FoilVerdict.values();

  private final CycleTally tally;
  private final HostMemory memory;
  private final String nextLot;

  /** Sees the tally and what the host knows as they are when the notice is told. */
  NoticeData(CycleTally tally, HostMemory memory, String nextLot) {
    this.tally = tally;
    this.memory = memory;
    this.nextLot = nextLot;
  }

  Document of(NoticeKind kind, int first, int second, Instant now) {
    return switch (kind) {
      case PHASE_CHANGED -> phaseChanged(Phase.of(first), Phase.of(second));
      case CYCLE_STARTED -> started(Programme.of(first), second);
      case CYCLE_PAUSED -> paused(first, Phase.of(second));
      case CYCLE_RESUMED -> cycle().word("phase", Phase.of(first)).build();
      case CYCLE_COMPLETED -> cycle().build();
      case CYCLE_STOPPED -> caused(first).build();
      case CYCLE_INTERRUPTED -> caused(first).words("faults", CycleRecorder.faults(tally)).build();
      case FAULT_RAISED, FAULT_CLEARED -> fault(Fault.of(first));
      case COMMAND_REFUSED -> refused(Command.of(first), Refusal.of(second));
      case SOLUTION_FILLED -> Document.builder().textUnlessEmpty("lot", nextLot).build();
      case SOLUTION_DRAINED, SOLUTION_DUE -> solution(now);
      case SOLUTION_DEGASSED, DRAIN_DUE, FOIL_DUE -> Document.EMPTY;
      case FOIL_CHECKED -> cycle().word("verdict", VERDICTS[first]).build();
      case NOTICES_LOST -> Document.builder().number("missing", first).build();
    };
  }

  private Document paused(int cause, Phase held) {
    return caused(cause).word("phase", held).build();
  }

  private Document.Builder caused(int cause) {
    Document.Builder document = cycle();
    Cause.of(CycleCause.of(cause)).ifPresent(word -> document.word("cause", word));
    return document;
  }

  private Document solution(Instant now) {
    return memory.solution().map(known -> HostData.solution(known, now)).orElse(Document.EMPTY);
  }

  private Document.Builder cycle() {
    return Document.builder().number("cycle", tally.number());
  }

  private Document started(Programme programme, int setpointMilliC) {
    CycleOrder order = memory.cycle().map(OpenCycle::order).orElse(CycleOrder.NONE);
    return cycle()
        .word("programme", programme)
        .document("setpoints", Setpoints.of(setpointMilliC, order.recipe()))
        .textUnlessEmpty("operator", order.reference().operator())
        .textUnlessEmpty("load", order.reference().load())
        .build();
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
