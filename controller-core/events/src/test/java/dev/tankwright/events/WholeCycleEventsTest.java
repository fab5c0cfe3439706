package dev.tankwright.events;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A whole cycle, driven on an ideal bath that starts at its setpoint, so that every moment follows
 * from the profile: self test 500 ms, then the scans of 10 ms at which something is asked.
 */
class WholeCycleEventsTest {
  private static final Recipe MEDIUM = Recipe.standard(Programme.MEDIUM);

  private static IdealBath medium() {
    IdealBath bath = new IdealBath(40_000);
    bath.composer.expect(new LoadReference("op-7", "tray 12"));
    return bath.run(1_000).start(MEDIUM).run(901_000).acknowledge(FoilVerdict.NONE);
  }

  @Test
  void everyFactBecomesOneEventInOrder() {
    List<String> told =
        medium().events.stream()
            .map(
                e ->
                    e.time().toEpochMilli()
                        - IdealBath.START.toEpochMilli()
                        + " "
                        + e.type()
                        + " "
                        + e.subject().orElse("-")
                        + (e.type() == EventType.CYCLE_RECORDED ? "" : " " + e.data()))
            .toList();
    assertEquals(
        List.of(
            "0 DEVICE_STARTED - {softwareVersion=0.1.0, memory=EMPTY, offSeconds=0}",
            "500 PHASE_CHANGED - {from=SELF_TEST, to=STANDBY}",
            "1000 PHASE_CHANGED cycle/0001 {from=STANDBY, to=HEATING}",
            "1000 CYCLE_STARTED cycle/0001 {cycle=1, programme=MEDIUM,"
                + " setpoints={temperatureCelsius=40.0, degassingSeconds=300.0,"
                + " cleaningSeconds=600.0}, operator=op-7, load=tray 12}",
            "1010 PHASE_CHANGED cycle/0001 {from=HEATING, to=DEGASSING}",
            "301010 SOLUTION_DEGASSED cycle/0001 {}",
            "301010 PHASE_CHANGED cycle/0001 {from=DEGASSING, to=CLEANING}",
            "901010 PHASE_CHANGED cycle/0001 {from=CLEANING, to=COMPLETE}",
            "901010 CYCLE_COMPLETED cycle/0001 {cycle=1}",
            "901010 CYCLE_RECORDED cycle/0001",
            "902010 PHASE_CHANGED - {from=COMPLETE, to=STANDBY}"),
        told);
  }

  @Test
  void theSequenceHasNoGapAndSortsAsText() {
    List<CycleEvent> events = medium().events;
    for (int i = 0; i < events.size(); i++) {
      assertEquals(i + 1, events.get(i).sequence());
      assertEquals(events.get(i).id(), events.get(i).sequenceText());
    }
    List<String> ids = events.stream().map(CycleEvent::id).toList();
    assertEquals("0000000001", ids.get(0));
    assertEquals("0000000010", ids.get(9));
    assertEquals(ids.stream().sorted().distinct().toList(), ids);
  }

  @Test
  void theRecordSaysWhatTheBathSaw() {
    IdealBath bath = medium();
    CycleRecord record = bath.composer.lastRecord().orElseThrow();
    assertEquals(1, record.cycle());
    assertEquals(Programme.MEDIUM, record.programme());
    assertEquals(Outcome.COMPLETED, record.outcome());
    assertEquals(Optional.empty(), record.cause());
    assertEquals(Instant.parse("2026-03-01T08:00:01Z"), record.started());
    assertEquals(Instant.parse("2026-03-01T08:15:01.010Z"), record.ended());
    assertEquals(
        Map.of(
            Phase.HEATING,
            10L,
            Phase.DEGASSING,
            300_000L,
            Phase.CLEANING,
            600_000L,
            Phase.PAUSED,
            0L),
        record.phaseMs());
    assertEquals(bath.soundingMs, record.ultrasoundMs());
    // Pulses of 6 s in every 10 s of degassing, then without a break.
    assertEquals(300_000 * 6 / 10 + 600_000, record.ultrasoundMs());
    assertEquals(0, record.heaterMs());
    assertEquals(0, record.interruptions());
    assertTrue(record.degassed());
    assertEquals(List.of(), record.faults());
  }

  @Test
  void measuredTemperaturesAreThoseOfTheBath() {
    IdealBath bath = new IdealBath(30_000);
    bath.run(1_000).start(MEDIUM).run(910_000);
    CycleRecord record = bath.composer.lastRecord().orElseThrow();
    CycleRecord.Temperatures seen = record.temperatures().orElseThrow();
    // One count of the converter is 0.147 Ω, which is 0.039 °C: half of it is the rounding, and one
    // more may be taken for noise.
    assertEquals(bath.milliC, (double) seen.maximumMilliC(), 60);
    assertEquals(39_700, (double) seen.minimumMilliC(), 80);
    assertEquals(bath.milliC, (double) seen.meanMilliC(), 60);
    assertEquals(bath.heaterOnMs, record.heaterMs());
    // 10 K at 2 K/s, and the upper half of the dead band.
    assertEquals(5_150, (double) record.heaterMs(), 30);
  }

  @Test
  void theRecordedEventCarriesTheRecord() {
    IdealBath bath = medium();
    CycleEvent recorded = bath.events.get(9);
    assertEquals(EventType.CYCLE_RECORDED, recorded.type());
    assertEquals(bath.composer.lastRecord().orElseThrow().document(), recorded.data());
    Document seconds = (Document) recorded.data().values().get("phaseSeconds");
    assertEquals(new BigDecimal("300.0"), seconds.values().get("DEGASSING"));
    assertEquals(new BigDecimal("0.01"), seconds.values().get("HEATING"));
    assertEquals(new BigDecimal("780.0"), recorded.data().values().get("ultrasoundSeconds"));
  }

  @Test
  void operatorAndLoadBelongToOneCycleOnly() {
    IdealBath bath = medium();
    bath.start(MEDIUM).run(10).command(Command.STOP);
    CycleRecord second = bath.composer.lastRecord().orElseThrow();
    assertEquals(2, second.cycle());
    assertEquals(LoadReference.NONE, second.order().reference());
    assertEquals(
        List.of(), second.document().values().keySet().stream().filter("load"::equals).toList());
  }

  @Test
  void theSameRunGivesTheSameBytes() {
    List<CycleEvent> once = medium().events;
    List<CycleEvent> again = medium().events;
    assertEquals(once, again);
    for (int i = 0; i < once.size(); i++) {
      assertArrayEquals(CloudEventJson.toJson(once.get(i)), CloudEventJson.toJson(again.get(i)));
    }
  }
}
