package dev.tankwright.record;

import dev.tankwright.checksum.Sha256;
import dev.tankwright.events.ChainLink;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Takes one batch of messages into the open transaction: what is new is stored, what was there
 * already is counted, what does not fit is noted, and what is no event is put aside. What it needs
 * to know of earlier batches it reads from the database.
 */
final class Intake {
  private static final String INSERT =
      "INSERT INTO event (device, sequence, type, subject, time, chain, payload, recorded)"
          + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)";
  private static final String STORED =
      "SELECT payload FROM event WHERE device = ? AND sequence = ?";

  private final Sql sql;
  private final String now;
  private final BatchResult noted = new BatchResult();
  private final Findings findings;
  private final CycleTable cycles;
  private final Map<String, RecordedChain> devices = new LinkedHashMap<>();

  Intake(Sql sql, String now) {
    this.sql = sql;
    this.now = now;
    findings = new Findings(sql, now, noted);
    cycles = new CycleTable(sql);
  }

  void take(Message message) throws SQLException {
    try {
      EventReader.DeviceEvent read = EventReader.read(message);
      place(read.device(), read.event());
    } catch (NotAnEventException e) {
      putAside(message, EventReader.plain(e.getMessage()));
    }
  }

  /** Stores how far each device has come; what was noted holds once this is committed. */
  BatchResult end() throws SQLException {
    for (RecordedChain device : devices.values()) {
      device.store(sql);
    }
    return noted;
  }

  private void place(String device, ChainedEvent event) throws SQLException {
    RecordedChain state = devices.get(device);
    if (state == null) {
      Optional<RecordedChain> known = RecordedChain.load(sql, device);
      state = known.isPresent() ? known.get() : begin(device, event);
      devices.put(device, state);
    }
    if (event.sequence() > state.last) {
      append(state, event);
      return;
    }
    Optional<byte[]> stored = sql.first(STORED, row -> row.getBytes(1), device, event.sequence());
    if (stored.isEmpty()) {
      insertLate(state, event);
    } else if (Arrays.equals(stored.get(), event.payload())) {
      state.doubled++;
      noted.addDoubled();
    } else {
      findings.add(Finding.changed(device, event.sequence()));
      putAside(
          new Message("tankwright/" + device + "/events", event.payload()),
          "event " + event.sequence() + " of this device is stored with different content");
    }
  }

  // A recorder may come to a device in the middle of its life: what was before is not missing.
  private RecordedChain begin(String device, ChainedEvent event) {
    long before = event.sequence() - 1;
    noted.addBegun(device + ": recorded from event " + event.sequence() + " on");
    String chain = before == 0 ? ChainLink.START.chain() : "";
    return new RecordedChain(device, event.sequence(), before, chain, 0);
  }

  private void append(RecordedChain state, ChainedEvent event) throws SQLException {
    long number = event.sequence();
    boolean next = number == state.last + 1;
    if (!next) {
      findings.add(Finding.gap(state.device, state.last + 1, number - 1));
    }
    insert(state.device, event);
    if (next && !state.lastChain.isEmpty() && !event.follows(state.lastChain)) {
      findings.add(Finding.broken(state.device, number));
    }
    state.last = number;
    state.lastChain = event.chain();
  }

  private void insertLate(RecordedChain state, ChainedEvent event) throws SQLException {
    long number = event.sequence();
    insert(state.device, event);
    if (number < state.first - 1) {
      findings.add(Finding.gap(state.device, number + 1, state.first - 1));
    }
    state.first = Math.min(state.first, number);
    Optional<String> before = chainAt(state.device, number - 1);
    if (before.isPresent() && !event.follows(before.get())) {
      findings.add(Finding.broken(state.device, number));
    }
    Optional<byte[]> after = sql.first(STORED, row -> row.getBytes(1), state.device, number + 1);
    if (after.isPresent() && !follows(after.get(), event.chain())) {
      findings.add(Finding.broken(state.device, number + 1));
    }
    findings.filled(state.device, number);
  }

  private Optional<String> chainAt(String device, long number) throws SQLException {
    if (number == 0) {
      return Optional.of(ChainLink.START.chain());
    }
    return sql.first(
        "SELECT chain FROM event WHERE device = ? AND sequence = ?",
        row -> row.getString(1),
        device,
        number);
  }

  private static boolean follows(byte[] stored, String chain) {
    try {
      return ChainedEvent.read(stored).follows(chain);
    } catch (NotAnEventException e) {
      return false; // it was one when it was stored
    }
  }

  private void insert(String device, ChainedEvent event) throws SQLException {
    sql.update(
        INSERT,
        device,
        event.sequence(),
        event.type(),
        event.subject(),
        event.time(),
        event.chain(),
        event.payload(),
        now);
    noted.addFresh();
    cycles.begun(device, event);
    if (CycleTable.isRecord(event)) {
      Optional<CycleReport> report = cycles.recorded(device, event);
      if (report.isPresent()) {
        noted.addCycle(report.get());
      } else {
        findings.add(Finding.record(device, event.sequence()));
      }
    }
  }

  private void putAside(Message message, String reason) throws SQLException {
    int added =
        sql.update(
            "INSERT INTO aside (topic, fingerprint, payload, reason, recorded)"
                + " VALUES (?, ?, ?, ?, ?) ON CONFLICT (topic, fingerprint) DO NOTHING",
            EventReader.plain(message.topic()),
            Sha256.of(message.payload()),
            message.payload(),
            reason,
            now);
    if (added > 0) {
      noted.addAside(EventReader.plain(message.topic()) + ": set aside: " + reason);
    }
  }
}
