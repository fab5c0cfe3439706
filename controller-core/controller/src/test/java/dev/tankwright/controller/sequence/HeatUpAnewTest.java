package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.trace.Requirement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What one cycle or one phase has counted is no part of the next one. */
class HeatUpAnewTest {
  private static final DeviceProfile QUICK =
      ScanRig.PROFILE.with(Parameter.HEAT_UP_MAXIMUM, 20_000).with(Parameter.PAUSE_MAXIMUM, 10_000);

  @Test
  @Requirement("SR-16")
  @DisplayName("a cycle that starts in the scan after a pause has expired heats up from nothing")
  void afterAnExpiredPause() {
    ScanRig rig = ScanRig.selfTested(QUICK).advance(330).start(ScanRig.SHORT).advance(15_000);
    rig.press(Command.PAUSE).until(Phase.STANDBY, 11_000).start(ScanRig.SHORT);
    rig.advance(20_000 - ScanRig.SCAN).expectNoFault().expect(Phase.HEATING);
    rig.advance(2 * ScanRig.SCAN).expect(Phase.LOCKOUT);
    assertEquals(Fault.HEAT_UP_TOO_LONG, rig.outputs.panel.fault);
  }

  @Test
  @DisplayName("how long a pause that was left had lasted is no part of the state any more")
  void pauseIsForgotten() {
    assertEquals(state(stoppedAfter(2_000)), state(stoppedAfter(7_000)));
  }

  /** Nine seconds after the pause began, stopped at the given time within them. */
  private static ScanRig stoppedAfter(int ms) {
    ScanRig rig = ScanRig.selfTested(QUICK).start(ScanRig.SHORT).press(Command.PAUSE).advance(ms);
    return rig.press(Command.STOP).advance(9_000 - ms).expect(Phase.STANDBY);
  }

  @Test
  @DisplayName("a self test after a reset lasts its whole time again")
  void selfTestAnew() {
    ScanRig rig = ScanRig.in(Phase.LOCKOUT).advance(1_000).press(Command.RESET);
    int time = Parameter.SELF_TEST_TIME.standard();
    rig.expect(Phase.SELF_TEST).advance(time).expect(Phase.SELF_TEST);
    rig.scan(ScanRig.SCAN).expect(Phase.STANDBY);
  }

  @Test
  @DisplayName("an acknowledgement announces as cleared what was latched, and nothing else")
  void clearsWhatWasLatched() {
    ScanRig rig = ScanRig.selfTested().press(Command.ACKNOWLEDGE);
    rig.lid(false).press(Command.START).press(Command.ACKNOWLEDGE);
    assertEquals(
        List.of(Fault.LID_OPEN_AT_START.ordinal()),
        rig.notes.stream()
            .filter(note -> note.kind() == NoticeKind.FAULT_CLEARED)
            .map(note -> note.first())
            .toList());
  }

  private static List<Integer> state(ScanRig rig) {
    StateWords state = new StateWords(CleanerController.STATE_WORDS);
    rig.controller.capture(state);
    List<Integer> words = new ArrayList<>();
    for (int at = 0; at < state.size(); at++) {
      words.add(state.word(at));
    }
    return words;
  }
}
