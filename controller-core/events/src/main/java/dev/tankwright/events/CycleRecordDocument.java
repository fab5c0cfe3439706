package dev.tankwright.events;

import dev.tankwright.controller.board.Phase;

/** The document that a cycle record is written as: its keys, their order and their units. */
final class CycleRecordDocument {
  static final String SCHEMA = "dev.tankwright.cycle-record.v1";
  private static final String CAUTION =
      "Simulated: this record shows what the control logic did. It does not show that anything"
          + " became clean.";

  private CycleRecordDocument() {}

  static Document of(CycleRecord record) {
    Document.Builder document = Document.builder().text("schema", SCHEMA);
    if (record.simulated()) {
      document.text("caution", CAUTION);
    }
    describe(record, document);
    measure(record, document);
    return document
        .words("faults", record.faults())
        .word("verdict", record.verdict())
        .words("deviations", record.deviations())
        .build();
  }

  private static void describe(CycleRecord record, Document.Builder document) {
    document
        .text("device", record.device())
        .text("softwareVersion", record.softwareVersion())
        .number("cycle", record.cycle())
        .word("programme", record.programme())
        .textUnlessEmpty("operator", record.order().reference().operator())
        .textUnlessEmpty("load", record.order().reference().load())
        .time("started", record.started())
        .time("ended", record.ended())
        .word("outcome", record.outcome());
    record.cause().ifPresent(cause -> document.word("cause", cause));
    record
        .solution()
        .ifPresent(s -> document.document("solution", HostData.solution(s, record.started())));
  }

  private static void measure(CycleRecord record, Document.Builder document) {
    document.document("setpoints", Setpoints.of(record.setpointMilliC(), record.order().recipe()));
    record.temperatures().ifPresent(t -> document.document("temperatures", temperatures(t)));
    document
        .document("phaseSeconds", phaseSeconds(record))
        .thousandths("ultrasoundSeconds", record.ultrasoundMs())
        .thousandths("heaterSeconds", record.heaterMs())
        .thousandths("energyEstimateWattHours", record.energyMilliWattHours())
        .number("interruptions", record.interruptions())
        .documents("pauses", record.pauses().stream().map(Pause::document).toList())
        .flag("degassed", record.degassed());
  }

  private static Document temperatures(CycleRecord.Temperatures temperatures) {
    return Document.builder()
        .thousandths("minimumCelsius", temperatures.minimumMilliC())
        .thousandths("meanCelsius", temperatures.meanMilliC())
        .thousandths("maximumCelsius", temperatures.maximumMilliC())
        .build();
  }

  private static Document phaseSeconds(CycleRecord record) {
    Document.Builder seconds = Document.builder();
    for (Phase phase : Phase.values()) {
      if (record.phaseMs().containsKey(phase)) {
        seconds.thousandths(phase.name(), record.phaseMs().get(phase));
      }
    }
    return seconds.build();
  }
}
