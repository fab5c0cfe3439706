package dev.tankwright.record;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes events or records of cycles for other programs: as comma-separated values by RFC 4180 with
 * a line of headings, or as one JSON document per line. Flushes and closes nothing.
 */
public final class Export {
  private static final String[] EVENT =
      "device,sequence,type,subject,time,chain,recorded,data".split(",", -1);
  private static final String[] CYCLE =
      "device,cycle,programme,started,ended,outcome,verdict,interruptions,faults,record_sequence"
          .split(",", -1);

  private final Records records;
  private final List<String> devices;

  /** Of one device, or of all. */
  public Export(Records records, Optional<String> device) throws StoreException {
    this.records = records;
    devices = device.isPresent() ? List.of(device.get()) : records.devices();
  }

  /** Every stored event as it was received, to the byte, one per line. */
  public void eventsAsNdjson(Appendable out) throws IOException {
    for (String device : devices) {
      records.each(device, row -> out.append(row.text()).append('\n'));
    }
  }

  /** Every stored event; the last column is its data as JSON. */
  public void eventsAsCsv(Appendable out) throws IOException {
    CSVPrinter csv = printer(out, EVENT);
    for (String device : devices) {
      records.each(
          device,
          row ->
              csv.printRecord(
                  row.device(),
                  row.sequence(),
                  row.type(),
                  row.subject(),
                  row.time(),
                  row.chain(),
                  row.recorded(),
                  JsonData.line(row.payload())));
    }
  }

  /** The record of every cycle that has one, as the device sent it, one per line. */
  public void recordsAsNdjson(Appendable out) throws IOException {
    for (CycleRow cycle : cycles()) {
      Optional<EventRow> carrier =
          cycle.recordSequence() == null
              ? Optional.empty()
              : records.event(cycle.device(), cycle.recordSequence());
      if (carrier.isPresent()) {
        out.append(JsonData.line(carrier.get().payload())).append('\n');
      }
    }
  }

  /** Every cycle; what only its record tells is empty while that is missing. */
  public void recordsAsCsv(Appendable out) throws IOException {
    CSVPrinter csv = printer(out, CYCLE);
    for (CycleRow row : cycles()) {
      Object[] values = {
        row.device(),
        row.cycle(),
        row.programme(),
        row.started(),
        row.ended(),
        row.outcome(),
        row.verdict(),
        row.interruptions(),
        row.faults(),
        row.recordSequence()
      };
      csv.printRecord(Arrays.asList(values));
    }
  }

  private List<CycleRow> cycles() throws StoreException {
    return records.cycles(devices.size() == 1 ? Optional.of(devices.get(0)) : Optional.empty());
  }

  private static CSVPrinter printer(Appendable out, String[] headings) throws IOException {
    return new CSVPrinter(out, CSVFormat.RFC4180.builder().setHeader(headings).get());
  }
}
