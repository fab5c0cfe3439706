package dev.tankwright.record;

import dev.tankwright.events.ChainCheck;
import dev.tankwright.events.ChainFinding;
import dev.tankwright.events.ChainLink;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Walks through the chain of a device from the stored texts, and holds every row to what its text
 * says. Events that a recorder adds meanwhile are left for the next time.
 */
public final class Verification {
  private static final int LINKS_AT_A_TIME = 1_000; // the check keeps what it has seen

  /**
   * What was found of a device.
   *
   * @param device the device
   * @param first number of the first event that was recorded
   * @param last number of the last one
   * @param events how many are there
   * @param findings what is wrong, in the order of numbers; empty when nothing is
   */
  public record Result(String device, long first, long last, long events, List<Finding> findings) {}

  private final Records records;
  private final RecordedChain state;
  private final Set<Finding> found = new LinkedHashSet<>();
  private ChainCheck check;
  private long inCheck;
  private long events;
  private long lastSeen;
  private String lastChain = "";

  private Verification(Records records, RecordedChain state) {
    this.records = records;
    this.state = state;
  }

  /**
   * Verifies one device.
   *
   * @throws StoreException if the database cannot be read
   */
  public static Result of(Records records, String device) throws IOException {
    Verification verification = new Verification(records, records.state(device).orElseThrow());
    return verification.walk();
  }

  private Result walk() throws IOException {
    lastSeen = state.first - 1;
    check = state.first == 1 ? ChainCheck.fromStart() : null;
    for (Finding noticed : records.openFindings(state.device)) {
      if (noticed.kind() != FindingKind.GAP) { // what is missing shows in the walk
        found.add(noticed);
      }
    }
    records.each(state.device, this::take);
    checkEnd();
    for (CycleRow row : records.cycles(Optional.of(state.device))) {
      checkCycle(row);
    }
    List<Finding> sorted = new ArrayList<>(found);
    sorted.sort((one, other) -> Long.compare(one.first(), other.first()));
    return new Result(state.device, state.first, state.last, events, List.copyOf(sorted));
  }

  private void take(EventRow row) {
    if (row.sequence() > state.last) {
      return;
    }
    events++;
    try {
      ChainedEvent event = EventReader.read(message(row)).event();
      compare(row, event);
      link(row, event);
    } catch (NotAnEventException e) {
      String text = "the stored text of event " + row.sequence() + " is no longer an event";
      found.add(Finding.at(row.device(), FindingKind.UNREADABLE, row.sequence(), text));
      check = null; // what comes next has nothing to follow from
    }
    lastSeen = row.sequence();
    lastChain = row.chain();
  }

  private static Message message(EventRow row) {
    return new Message("tankwright/" + row.device() + "/events", row.payload());
  }

  private void compare(EventRow row, ChainedEvent event) {
    differ(row, "sequence", String.valueOf(row.sequence()), String.valueOf(event.sequence()));
    differ(row, "type", row.type(), event.type());
    differ(row, "subject", row.subject(), event.subject());
    differ(row, "time", row.time(), event.time());
    differ(row, "chain", row.chain(), event.chain());
  }

  private void differ(EventRow row, String column, String stored, String said) {
    if (!stored.equals(said)) {
      String text =
          "%s of event %d is '%s' in its row and '%s' in its text"
              .formatted(column, row.sequence(), EventReader.plain(stored), said);
      found.add(Finding.at(row.device(), FindingKind.ALTERED, row.sequence(), text));
    }
  }

  private void link(EventRow row, ChainedEvent event) {
    if (event.sequence() != row.sequence()) {
      check = null;
      return;
    }
    if (row.sequence() > lastSeen + 1) {
      found.add(Finding.gap(row.device(), lastSeen + 1, row.sequence() - 1));
      check = null;
    }
    if (check != null) {
      for (ChainFinding finding : check.take(event)) {
        if (finding.kind() == ChainFinding.Kind.BROKEN) {
          found.add(Finding.broken(row.device(), finding.first()));
        }
      }
    }
    if (check == null || ++inCheck == LINKS_AT_A_TIME) {
      check = ChainCheck.after(new ChainLink(event.sequence(), event.chain()));
      inCheck = 0;
    }
  }

  private void checkEnd() {
    if (lastSeen < state.last) {
      String text =
          "event %d was recorded last, but the last stored event is %d"
              .formatted(state.last, lastSeen);
      found.add(new Finding(state.device, FindingKind.END, lastSeen + 1, state.last, text));
    } else if (!lastChain.equals(state.lastChain)) {
      String text = "event %d was recorded with another chain value".formatted(state.last);
      found.add(Finding.at(state.device, FindingKind.END, state.last, text));
    }
  }

  private void checkCycle(CycleRow row) throws StoreException {
    if (row.recordSequence() == null) {
      return;
    }
    Optional<EventRow> carrier = records.event(row.device(), row.recordSequence());
    if (carrier.flatMap(Verification::report).map(CycleRow::of).filter(row::equals).isEmpty()) {
      String text = "the row of cycle %d differs from its record".formatted(row.cycle());
      found.add(Finding.at(row.device(), FindingKind.CYCLE, row.recordSequence(), text));
    }
  }

  private static Optional<CycleReport> report(EventRow row) {
    try {
      return CycleReport.read(row.device(), ChainedEvent.read(row.payload()));
    } catch (NotAnEventException e) {
      return Optional.empty();
    }
  }
}
