package dev.tankwright.events;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every value of a record differs from every other, so that none can stand in another's place. */
class CycleRecordTest {
  private final Map<Phase, Long> phaseMs = new EnumMap<>(Phase.class);
  private final List<Fault> faults =
      new ArrayList<>(List.of(Fault.GENERATOR_FAULT, Fault.HEAT_UP_TOO_LONG));

  private CycleRecord record() {
    phaseMs.put(Phase.CLEANING, 111_000L);
    phaseMs.put(Phase.PAUSED, 5_250L);
    phaseMs.put(Phase.HEATING, 61_010L);
    phaseMs.put(Phase.DEGASSING, 300_000L);
    return new CycleRecord(
        "bath-3",
        "0.2.1",
        17,
        Programme.CUSTOM,
        Outcome.INTERRUPTED,
        Optional.of(Cause.FAULT),
        IdealBath.START,
        IdealBath.START.plusMillis(477_260),
        new CycleOrder(
            Optional.of(
                new Recipe(
                    Programme.CUSTOM, 42_000, 300_500, 420_000, new Chemistry(true, 43_000))),
            new LoadReference("op-7", "tray 12")),
        Optional.of(
            new SolutionInUse(
                "lot 26-114", IdealBath.START.minusSeconds(3_600), Optional.empty(), 4)),
        42_000,
        Optional.of(new CycleRecord.Temperatures(41_712, 42_003, 42_290)),
        phaseMs,
        2,
        List.of(
            new Pause(
                IdealBath.START.plusMillis(61_010),
                Cause.LID,
                Phase.CLEANING,
                Duration.ofMillis(5_250))),
        true,
        291_000,
        88_880,
        19_532,
        faults,
        true);
  }

  @Test
  void theFileSaysEverythingInItsPlace() {
    String expected =
        """
        {
          "schema": "dev.tankwright.cycle-record.v1",
          "caution": "Simulated: this record shows what the control logic did. It does not show \
        that anything became clean.",
          "device": "bath-3",
          "softwareVersion": "0.2.1",
          "cycle": 17,
          "programme": "CUSTOM",
          "operator": "op-7",
          "load": "tray 12",
          "started": "2026-03-01T08:00:00.000Z",
          "ended": "2026-03-01T08:07:57.260Z",
          "outcome": "INTERRUPTED",
          "cause": "FAULT",
          "solution": {
            "lot": "lot 26-114",
            "filled": "2026-03-01T07:00:00.000Z",
            "ageSeconds": 3600.0,
            "cycles": 4
          },
          "setpoints": {
            "temperatureCelsius": 42.0,
            "degassingSeconds": 300.5,
            "cleaningSeconds": 420.0,
            "chemistry": {
              "enzymatic": true,
              "maximumCelsius": 43.0
            }
          },
          "temperatures": {
            "minimumCelsius": 41.712,
            "meanCelsius": 42.003,
            "maximumCelsius": 42.29
          },
          "phaseSeconds": {
            "HEATING": 61.01,
            "DEGASSING": 300.0,
            "CLEANING": 111.0,
            "PAUSED": 5.25
          },
          "ultrasoundSeconds": 291.0,
          "heaterSeconds": 88.88,
          "energyEstimateWattHours": 19.532,
          "interruptions": 2,
          "pauses": [
            {
              "at": "2026-03-01T08:01:01.010Z",
              "cause": "LID",
              "phase": "CLEANING",
              "seconds": 5.25
            }
          ],
          "degassed": true,
          "faults": [
            "GENERATOR_FAULT",
            "HEAT_UP_TOO_LONG"
          ],
          "verdict": "DEVIATING",
          "deviations": [
            "NOT_COMPLETED",
            "FAULT",
            "TIME_SHORT"
          ]
        }
        """;
    assertEquals(expected, new String(record().toJson(), UTF_8));
  }

  @Test
  void nothingChangesARecordFromOutside() {
    CycleRecord record = record();
    phaseMs.put(Phase.CLEANING, 0L);
    faults.clear();
    assertEquals(111_000L, record.phaseMs().get(Phase.CLEANING));
    assertEquals(2, record.faults().size());
    assertThrows(UnsupportedOperationException.class, () -> record.faults().clear());
    assertThrows(UnsupportedOperationException.class, () -> record.phaseMs().clear());
    assertThrows(
        UnsupportedOperationException.class, () -> record.document().values().remove("caution"));
  }

  @Test
  void documentsDifferByOrderAndKeysAreUsedOnce() {
    Document ab = Document.builder().number("a", 1).number("b", 2).build();
    Document ba = Document.builder().number("b", 2).number("a", 1).build();
    assertEquals(false, ab.equals(ba));
    assertEquals(ab, Document.builder().number("a", 1).number("b", 2).build());
    Document.Builder twice = Document.builder().number("a", 1);
    assertThrows(IllegalStateException.class, () -> twice.number("a", 2));
  }
}
