package dev.tankwright.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.memory.Loaded;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the host tells beside the controller's notices, and what it keeps for that. */
class HostEventsTest {
  private static final Recipe LIGHT = Recipe.standard(Programme.LIGHT);
  private static final EventOrigin ORIGIN =
      new EventOrigin("bath-1", IdealBath.START, "0.1.0", false);
  private static final Set<EventType> OF_HOST =
      EnumSet.of(
          EventType.DEVICE_STARTED,
          EventType.CLOCK_SET,
          EventType.MEMORY_TROUBLE,
          EventType.SOLUTION_FILLED,
          EventType.SOLUTION_CHANGED);

  private final IdealBath bath = new IdealBath(40_000, ORIGIN);

  private List<String> told() {
    return bath.events.stream()
        .filter(event -> OF_HOST.contains(event.type()))
        .map(e -> e.type() + " " + e.subject().orElse("-") + " " + e.data())
        .toList();
  }

  private CycleRecord record() {
    return bath.composer.lastRecord().orElseThrow();
  }

  private void powerUp(Loaded found) {
    EventOrigin later =
        new EventOrigin("bath-1", ORIGIN.at(bath.controller.uptimeMs() + 30_000), "0.1.1", false);
    bath.composer.powerUp(later, bath.controller.cycleTally(), found, 30);
  }

  @Test
  void theChainGoesOnOverPowerUpsAndAcrossComposers() throws NotAnEventException {
    bath.run(1_000).start(LIGHT).run(1_000);
    powerUp(Loaded.INTACT);
    EventComposer other = new EventComposer(bath.composer.memory(), bath.events::add);
    other.powerUp(ORIGIN, bath.controller.cycleTally(), Loaded.INTACT, 0);
    ChainCheck check = ChainCheck.fromStart();
    for (CycleEvent event : bath.events) {
      assertEquals(List.of(), check.take(ChainedEvent.read(CloudEventJson.toJson(event))));
    }
    assertEquals(bath.events.size(), check.events());
  }

  @Test
  void aMemoryThatIsDamagedSaysWhichCycleIsLostWithIt() {
    bath.run(1_000).start(LIGHT).run(1_000);
    bath.events.clear();
    powerUp(Loaded.DAMAGED);
    powerUp(Loaded.DAMAGED);
    String started = "DEVICE_STARTED - {softwareVersion=0.1.1, memory=DAMAGED, offSeconds=30}";
    assertEquals(
        List.of(
            started,
            "MEMORY_TROUBLE cycle/0001 {memory=DAMAGED, lostCycle=1}",
            started,
            "MEMORY_TROUBLE - {memory=DAMAGED}"),
        told());
  }

  @ParameterizedTest
  @EnumSource(Loaded.class)
  void memoryTroubleIsToldOfEveryMemoryThatIsNotInOrder(Loaded found) {
    bath.events.clear();
    powerUp(found);
    boolean trouble = found != Loaded.INTACT && found != Loaded.EMPTY;
    assertEquals(trouble ? 2 : 1, bath.events.size());
  }

  @Test
  void aMemoryThatIsEmptyInACycleIsTrouble() {
    bath.run(1_000).start(LIGHT).run(1_000);
    bath.events.clear();
    powerUp(Loaded.EMPTY);
    assertEquals("MEMORY_TROUBLE cycle/0001 {memory=EMPTY, lostCycle=1}", told().get(1));
  }

  @Test
  void aClockThatIsSetBackMovesNoLength() {
    bath.run(1_000).command(Command.FRESH_SOLUTION).run(1_000).start(LIGHT).run(60_000);
    bath.command(Command.PAUSE).run(5_000);
    Instant before = ORIGIN.at(bath.controller.uptimeMs());
    bath.composer.clockSet(before.minusSeconds(3_600), bath.controller.uptimeMs());
    bath.command(Command.RESUME).run(700_000);
    CycleEvent set =
        bath.events.stream().filter(e -> e.type() == EventType.CLOCK_SET).findFirst().orElseThrow();
    assertEquals(before.minusSeconds(3_600), set.time());
    assertEquals(Optional.of("cycle/0001"), set.subject());
    assertTrue(set.data().toString().contains("stepSeconds=-3600.0"), set.data().toString());
    assertEquals(
        record().phaseMs().values().stream().mapToLong(Long::longValue).sum(),
        Duration.between(record().started(), record().ended()).toMillis());
    assertEquals(Duration.ofMillis(5_010), record().pauses().get(0).length());
    assertEquals(
        Duration.ofMillis(1_010),
        record().solution().orElseThrow().age(record().started()),
        "the solution was filled 1010 ms before the start");
  }

  @Test
  void freshSolutionAfterAnotherIsAChange() {
    bath.composer.expectLot("lot 1");
    bath.run(1_000).command(Command.FRESH_SOLUTION).start(LIGHT).run(1_000).command(Command.STOP);
    bath.composer.expectLot("lot 2");
    bath.command(Command.FRESH_SOLUTION);
    assertEquals(
        List.of(
            "DEVICE_STARTED - {softwareVersion=0.1.0, memory=EMPTY, offSeconds=0}",
            "SOLUTION_FILLED - {lot=lot 1}",
            "SOLUTION_FILLED - {lot=lot 2}",
            "SOLUTION_CHANGED - {lot=lot 2, former={lot=lot 1, filled=2026-03-01T08:00:01.000Z,"
                + " ageSeconds=1.03, cycles=1}}"),
        told());
    assertEquals("lot 1", record().solution().orElseThrow().lot());
    bath.command(Command.FRESH_SOLUTION);
    assertEquals("", bath.composer.memory().solution().orElseThrow().lot());
  }

  @Test
  void aDrainedSolutionIsInNoRecordAndAgesNoMore() {
    bath.run(1_000).command(Command.FRESH_SOLUTION).command(Command.DRAIN);
    bath.inputs.minimumLevelWet(false);
    bath.inputs.fillMarkWet(false);
    bath.run(61_000);
    bath.inputs.minimumLevelWet(true);
    bath.inputs.fillMarkWet(true);
    bath.run(10_000).start(LIGHT).run(1_000).command(Command.STOP);
    assertEquals(Optional.empty(), record().solution());
    SolutionInUse known = bath.composer.memory().solution().orElseThrow();
    assertTrue(known.age(IdealBath.START.plusSeconds(3_600)).toSeconds() < 62, known.toString());
  }

  @Test
  void everyPauseStandsInTheRecordUpToALimit() {
    bath.run(1_000).start(LIGHT).run(1_000);
    for (int i = 0; i < OpenCycle.PAUSES + 3; i++) {
      bath.command(Command.PAUSE).run(100).command(Command.RESUME).run(100);
    }
    bath.command(Command.PAUSE).run(1_000).command(Command.STOP);
    assertEquals(OpenCycle.PAUSES + 4, record().interruptions());
    assertEquals(OpenCycle.PAUSES, record().pauses().size());
    for (Pause pause : record().pauses()) {
      assertEquals(Duration.ofMillis(110), pause.length());
      assertEquals(Cause.OPERATOR, pause.cause());
      assertEquals(Phase.DEGASSING, pause.phase());
    }
  }

  @Test
  void aPauseThatEndsWithTheCycleHasALengthToo() {
    bath.run(1_000).start(LIGHT).run(1_000).command(Command.PAUSE).run(1_000).command(Command.STOP);
    assertEquals(Duration.ofMillis(1_010), record().pauses().get(0).length());
  }

  @Test
  void setValuesOfAnotherStartAreNotTaken() {
    bath.run(1_000);
    bath.inputs.recipe = LIGHT;
    bath.composer.expect(Recipe.standard(Programme.HEAVY));
    bath.command(Command.START).run(100).command(Command.STOP);
    assertEquals(Optional.empty(), record().order().recipe());
    assertEquals("{temperatureCelsius=40.0}", setpoints(record()));
  }

  private static String setpoints(CycleRecord record) {
    return record.document().values().get("setpoints").toString();
  }

  @Test
  void aCycleThatWentAsSetSaysSo() {
    bath.run(1_000).start(LIGHT).run(700_000);
    assertEquals(CycleVerdict.AS_SET, record().verdict());
    assertEquals(List.of(), record().deviations());
  }

  @Test
  void aSolutionThatCooledInThePauseIsADeviation() {
    bath.run(1_000).start(LIGHT).run(310_000).command(Command.PAUSE);
    for (int i = 0; i < 100; i++) {
      bath.milliC -= 40;
      bath.run(1_000);
    }
    bath.command(Command.RESUME).run(400_000);
    assertEquals(Outcome.COMPLETED, record().outcome());
    assertEquals(List.of(Deviation.TOO_COLD), record().deviations());
  }

  @Test
  void noNoticeIsTakenBeforeThePowerUp() {
    EventComposer composer = new EventComposer(HostMemory.NEW, event -> {});
    assertThrows(IllegalStateException.class, () -> composer.take(NoticeKind.DRAIN_DUE, 0, 0, 0));
  }
}
