package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What every command does in every phase of a device in which everything is in order. */
class CommandTableTest {
  /** The phase that follows an accepted command, or {@code -} where it has no meaning. */
  private static final String TABLE =
      """
      phase      START   PAUSE  RESUME   STOP    ACKNOWLEDGE DRAIN    FRESH_SOLUTION RESET
      SELF_TEST  -       -      -        -       -           -        -              -
      STANDBY    HEATING -      -        -       STANDBY     DRAINING STANDBY        -
      HEATING    -       PAUSED -        STANDBY -           -        -              -
      DEGASSING  -       PAUSED -        STANDBY -           -        -              -
      CLEANING   -       PAUSED -        STANDBY -           -        -              -
      PAUSED     -       -      HEATING  STANDBY -           -        -              -
      COMPLETE   -       -      -        -       STANDBY     -        -              -
      DRAINING   -       -      -        STANDBY -           -        -              -
      LOCKOUT    -       -      -        -       -           -        -              SELF_TEST
      """;

  private static final List<List<String>> ROWS =
      TABLE.lines().map(line -> List.of(line.trim().split("\\s+"))).toList();

  @TestFactory
  @DisplayName("every command in every phase is carried out, or refused with its reason")
  Stream<DynamicTest> everyPair() {
    List<String> commands = ROWS.get(0);
    return ROWS.stream()
        .skip(1)
        .flatMap(
            row ->
                IntStream.range(1, row.size())
                    .mapToObj(at -> pair(row.get(0), commands.get(at), row.get(at))));
  }

  private static DynamicTest pair(String phaseName, String commandName, String next) {
    Phase phase = Phase.valueOf(phaseName);
    Command command = Command.valueOf(commandName);
    return DynamicTest.dynamicTest(
        phase + " " + command + " " + next,
        () -> {
          ScanRig rig = ScanRig.in(phase);
          rig.inputs.recipe = ScanRig.SHORT;
          rig.press(command);
          if (next.equals("-")) {
            rig.expectRefused(command, Refusal.NOT_IN_THIS_PHASE).expect(phase);
            assertTrue(rig.outputs.buzzer, "a refusal beeps");
          } else {
            rig.expectAccepted().expect(Phase.valueOf(next));
          }
        });
  }

  @Test
  @DisplayName("the table above has a row for every phase and a column for every command")
  void tableIsWhole() {
    List<String> phases = ROWS.stream().skip(1).map(row -> row.get(0)).toList();
    assertEquals(Arrays.stream(Phase.values()).map(Enum::name).toList(), phases);
    List<String> commands = Arrays.stream(Command.values()).skip(1).map(Enum::name).toList();
    assertEquals(commands, ROWS.get(0).subList(1, ROWS.get(0).size()));
    ROWS.forEach(row -> assertEquals(commands.size() + 1, row.size(), row.get(0)));
  }

  @Test
  @DisplayName("a command acts once, however long it stands on the pins")
  void actsOnce() {
    ScanRig rig = ScanRig.selfTested().start(ScanRig.SHORT).press(Command.STOP);
    rig.inputs.command = Command.START;
    rig.advance(5_000).expect(Phase.STANDBY);
    assertEquals(1, rig.of(NoticeKind.CYCLE_STARTED, ScanRig.SHORT.programme().ordinal()).size());
  }

  @Test
  @DisplayName("what stands on the pins at power-up never acts")
  void powerUpCommandNeverActs() {
    ScanRig rig = ScanRig.poweredUp(ScanRig.selfTested().profile);
    rig.inputs.command = Command.START;
    rig.inputs.commandSequence = 77;
    rig.inputs.recipe = ScanRig.SHORT;
    rig.advance(2_000).expect(Phase.STANDBY).expectAccepted();
  }

  @Test
  @DisplayName("a refusal stays on the panel until another command is accepted")
  void refusalStays() {
    ScanRig rig = ScanRig.selfTested().press(Command.PAUSE).advance(10_000);
    assertEquals(Refusal.NOT_IN_THIS_PHASE, rig.outputs.panel.refusal);
    rig.press(Command.FRESH_SOLUTION).expectAccepted();
  }
}
