package dev.tankwright.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Cycles to which something happens: pauses, stops, faults, lost mains, lost notices. */
class EventfulCycleTest {
  private static final Recipe LIGHT = Recipe.standard(Programme.LIGHT);

  private final IdealBath bath = new IdealBath(40_000);

  private List<String> since(int from) {
    return bath.events.subList(from, bath.events.size()).stream()
        .filter(e -> e.type() != EventType.PHASE_CHANGED && e.type() != EventType.CYCLE_RECORDED)
        .map(e -> e.type() + " " + e.subject().orElse("-") + " " + e.data())
        .toList();
  }

  private CycleRecord record() {
    return bath.composer.lastRecord().orElseThrow();
  }

  private void startLight() {
    bath.run(1_000).start(LIGHT).run(60_000);
    bath.events.clear();
  }

  @Test
  void pausesSayWhoHeldTheCycle() {
    startLight();
    bath.command(Command.PAUSE).run(2_000).command(Command.RESUME).run(1_000);
    bath.lid(false).run(500).command(Command.RESUME).lid(true).run(3_000).command(Command.RESUME);
    assertEquals(
        List.of(
            "CYCLE_PAUSED cycle/0001 {cycle=1, cause=OPERATOR, phase=DEGASSING}",
            "CYCLE_RESUMED cycle/0001 {cycle=1, phase=DEGASSING}",
            "CYCLE_PAUSED cycle/0001 {cycle=1, cause=LID, phase=DEGASSING}",
            "COMMAND_REFUSED cycle/0001 {command=RESUME, refusal=LID_OPEN}",
            "CYCLE_RESUMED cycle/0001 {cycle=1, phase=DEGASSING}"),
        since(0));
    bath.run(700_000);
    assertEquals(Outcome.COMPLETED, record().outcome());
    assertEquals(2, record().interruptions());
    // The two pauses as driven: 2000 ms and the scan of the resume; 500 + 10 + 3000 ms.
    assertEquals(2_010 + 3_510, record().phaseMs().get(Phase.PAUSED));
  }

  @Test
  void phaseTimesAddUpToTheWholeCycle() {
    startLight();
    bath.command(Command.PAUSE).run(2_000).command(Command.RESUME).run(700_000);
    long whole = Duration.between(record().started(), record().ended()).toMillis();
    assertEquals(whole, record().phaseMs().values().stream().mapToLong(Long::longValue).sum());
  }

  @Test
  void theOperatorStopsACycle() {
    startLight();
    bath.command(Command.STOP);
    assertEquals(List.of("CYCLE_STOPPED cycle/0001 {cycle=1, cause=OPERATOR}"), since(0));
    assertEquals(Outcome.STOPPED, record().outcome());
    assertEquals(Optional.of(Cause.OPERATOR), record().cause());
    assertEquals(EventType.CYCLE_RECORDED, bath.events.get(bath.events.size() - 1).type());
  }

  @Test
  void aPauseThatLastsTooLongStopsTheCycle() {
    startLight();
    bath.command(Command.PAUSE).run(1_800_020);
    assertEquals("CYCLE_STOPPED cycle/0001 {cycle=1, cause=PAUSE_LIMIT}", since(0).get(1));
    assertEquals(Optional.of(Cause.PAUSE_LIMIT), record().cause());
  }

  @Test
  void lostMainsHoldACycle() {
    startLight();
    bath.inputs.mainsPresent(false);
    bath.run(10);
    assertEquals(
        List.of("CYCLE_PAUSED cycle/0001 {cycle=1, cause=MAINS, phase=HEATING}"), since(0));
  }

  @Test
  void aFaultInterruptsACycleAndIsClearedAfterIt() {
    startLight();
    bath.inputs.generatorFault(true);
    bath.run(500);
    bath.inputs.generatorFault(false);
    bath.run(500).command(Command.RESET);
    assertEquals(
        List.of(
            "FAULT_RAISED cycle/0001 {fault=GENERATOR_FAULT, requirement=SR-11, severity=LOCKOUT,"
                + " clearRule=RESET}",
            "CYCLE_INTERRUPTED cycle/0001 {cycle=1, cause=FAULT, faults=[GENERATOR_FAULT]}",
            "FAULT_CLEARED - {fault=GENERATOR_FAULT, requirement=SR-11, severity=LOCKOUT,"
                + " clearRule=RESET}",
            "FAULT_RESET - {faults=[GENERATOR_FAULT]}"),
        since(0));
    assertEquals(List.of(Fault.GENERATOR_FAULT), record().faults());
    assertEquals(Optional.of(Cause.FAULT), record().cause());
  }

  @Test
  void aCycleThatNeitherDegassedNorCleanedHasNoTemperatures() {
    IdealBath cold = new IdealBath(20_000);
    cold.run(1_000).start(LIGHT).run(100).command(Command.STOP);
    CycleRecord record = cold.composer.lastRecord().orElseThrow();
    assertEquals(Optional.empty(), record.temperatures());
    assertTrue(!record.document().values().containsKey("temperatures"));
  }

  @Test
  void aRefusedStartNamesItsReasonOutsideACycle() {
    bath.run(1_000).lid(false).run(100);
    bath.events.clear();
    bath.start(LIGHT);
    assertEquals(
        List.of(
            "FAULT_RAISED - {fault=LID_OPEN_AT_START, requirement=SR-01, severity=ADVISORY,"
                + " clearRule=ACKNOWLEDGE}",
            "COMMAND_REFUSED - {command=START, refusal=LID_OPEN}"),
        since(0));
  }

  @Test
  void solutionAndFoilAreTold() {
    bath.run(1_000).command(Command.FRESH_SOLUTION);
    bath.start(Recipe.standard(Programme.FOIL_CHECK)).run(601_000);
    bath.events.clear();
    bath.acknowledge(FoilVerdict.NONE).acknowledge(FoilVerdict.MARKED).command(Command.DRAIN);
    bath.inputs.minimumLevelWet(false);
    bath.inputs.fillMarkWet(false);
    bath.run(61_000);
    assertEquals(
        List.of(
            "COMMAND_REFUSED - {command=ACKNOWLEDGE, refusal=VERDICT_MISSING}",
            "FOIL_CHECKED cycle/0001 {cycle=1, verdict=MARKED}",
            "SOLUTION_DRAINED - {filled=2026-03-01T08:00:01.000Z, ageSeconds=661.05, cycles=1}"),
        since(0));
  }

  @Test
  void lostNoticesAreCountedAndTheSequenceGoesOn() {
    startLight();
    bath.draining = false;
    for (int i = 0; i < 70; i++) {
      bath.command(Command.DRAIN);
    }
    bath.draining = true;
    bath.run(10);
    assertEquals(65, bath.events.size());
    CycleEvent lost = bath.events.get(64);
    assertEquals(EventType.NOTICES_LOST, lost.type());
    assertEquals(Optional.of("cycle/0001"), lost.subject());
    assertEquals("{missing=6}", lost.data().toString());
    assertEquals(bath.events.get(63).sequence() + 1, lost.sequence());
    assertEquals(lost.sequence() + 1, bath.composer.nextSequence());
  }

  @Test
  void theCycleIsKnownAgainAfterItsStartWasLost() {
    bath.run(1_000);
    bath.draining = false;
    for (int i = 0; i < 64; i++) {
      bath.command(Command.RESUME);
    }
    bath.start(LIGHT).run(100);
    bath.draining = true;
    bath.run(10);
    bath.events.clear();
    bath.command(Command.PAUSE).command(Command.DRAIN);
    assertEquals(
        List.of(
            "CYCLE_PAUSED cycle/0001 {cycle=1, cause=OPERATOR, phase=DEGASSING}",
            "COMMAND_REFUSED cycle/0001 {command=DRAIN, refusal=NOT_IN_THIS_PHASE}"),
        since(0));
  }

  @Test
  void noticesOfACycleThatCameTooLateAreNotTakenForTheNextOne() {
    startLight();
    long earlier = bath.controller.uptimeMs();
    bath.command(Command.STOP).start(LIGHT);
    assertThrows(
        IllegalStateException.class,
        () -> bath.composer.take(NoticeKind.CYCLE_STOPPED, 0, 0, earlier));
  }
}
