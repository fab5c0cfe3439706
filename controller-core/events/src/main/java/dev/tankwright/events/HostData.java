package dev.tankwright.events;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.memory.Loaded;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What an event says that no notice stands behind. */
final class HostData {
  private HostData() {}

  static Document started(String softwareVersion, Loaded found, int secondsOff) {
    return Document.builder()
        .text("softwareVersion", softwareVersion)
        .word("memory", found)
        .number("offSeconds", secondsOff)
        .build();
  }

  static Document memoryTrouble(Loaded found, Optional<OpenCycle> lost) {
    Document.Builder document = Document.builder().word("memory", found);
    lost.ifPresent(cycle -> document.number("lostCycle", cycle.number()));
    return document.build();
  }

  static Document clockSet(Instant before, Instant after) {
    return Document.builder()
        .time("clockBefore", before)
        .time("clockAfter", after)
        .thousandths("stepSeconds", Duration.between(before, after).toMillis())
        .build();
  }

  static Document reset(List<Fault> cleared) {
    return Document.builder().words("faults", cleared).build();
  }

  static Document solutionChanged(SolutionInUse fresh, SolutionInUse old, Instant now) {
    return Document.builder()
        .textUnlessEmpty("lot", fresh.lot())
        .document("former", solution(old, now))
        .build();
  }

  /** A solution with its age at a moment. */
  static Document solution(SolutionInUse solution, Instant moment) {
    return Document.builder()
        .textUnlessEmpty("lot", solution.lot())
        .time("filled", solution.filled())
        .thousandths("ageSeconds", solution.age(moment).toMillis())
        .number("cycles", solution.cycles())
        .build();
  }
}
