package dev.tankwright.bench.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.explore.ShortTimes;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What lies outside the captured state decides nothing, so a state may stand for its history. */
class HistoryTest {
  private static final int HISTORY = 50_000;
  private static final int CONTINUED = 400;
  private static final int ROUNDS = 60;

  private final DeviceProfile profile = ShortTimes.of(DeviceProfile.sixLitre());
  private final Random random = new Random(20);
  private final Inputs in = new Inputs();
  private final StateWords state = new StateWords(CleanerController.STATE_WORDS);

  @Test
  @DisplayName("a long history and none, the same state: the same outputs, panel and notices")
  void alike() {
    CleanerController old = new CleanerController(profile);
    Outputs out = new Outputs();
    Set<dev.tankwright.controller.board.Phase> phases =
        EnumSet.noneOf(dev.tankwright.controller.board.Phase.class);
    for (int round = 0; round < ROUNDS; round++) {
      live(old, out, round == 0 ? HISTORY : CONTINUED + random.nextInt(50));
      phases.add(out.panel.phase);
      old.capture(state);
      CleanerController young = new CleanerController(profile);
      old.restore(state, in);
      young.restore(state, in);
      assertNotEquals(old.uptimeMs(), young.uptimeMs());
      goOn(old, young, out);
    }
    assertTrue(phases.size() >= 4, "only met in " + phases);
  }

  @Test
  @DisplayName("restored before every scan and never: the same outputs, panel and state")
  void restoredInEveryScan() {
    CleanerController left = new CleanerController(profile);
    CleanerController taken = new CleanerController(profile);
    StateWords other = new StateWords(CleanerController.STATE_WORDS);
    Outputs out = new Outputs();
    Outputs again = new Outputs();
    left.scan(in, out);
    taken.scan(in, again);
    for (int scan = 0; scan < HISTORY; scan++) {
      taken.capture(state);
      taken.restore(state, in);
      next(out);
      left.scan(in, out);
      taken.scan(in, again);
      assertEquals(text(out), text(again), "scan " + scan);
      left.capture(state);
      taken.capture(other);
      assertEquals(state.size(), other.size());
      for (int word = 0; word < state.size(); word++) {
        assertEquals(state.word(word), other.word(word), "word " + word + " in scan " + scan);
      }
      left.notices().drain((kind, first, second, uptime) -> {});
      taken.notices().drain((kind, first, second, uptime) -> {});
    }
  }

  private void live(CleanerController controller, Outputs out, int scans) {
    for (int scan = 0; scan < scans; scan++) {
      next(out);
      controller.scan(in, out);
      controller.notices().drain((kind, first, second, uptime) -> {});
    }
  }

  private void goOn(CleanerController old, CleanerController young, Outputs out) {
    Outputs other = new Outputs();
    List<String> told = new ArrayList<>();
    List<String> toldOther = new ArrayList<>();
    for (int scan = 0; scan < CONTINUED; scan++) {
      next(out);
      old.scan(in, out);
      young.scan(in, other);
      old.notices().drain((kind, first, second, at) -> told.add(kind + " " + first + " " + second));
      young
          .notices()
          .drain((kind, first, second, at) -> toldOther.add(kind + " " + first + " " + second));
      assertEquals(text(out), text(other));
    }
    assertEquals(told, toldOther);
  }

  /** Feedbacks answer for the most part, so that cycles are run. */
  private void next(Outputs out) {
    in.millis += rarely() ? random.nextInt(200) - 100 : ShortTimes.SCAN_MS;
    in.lidMakeContact(!rarely());
    in.lidBreakContact(in.lidMakeContact() == rarely());
    in.minimumLevelWet(!rarely());
    in.fillMarkWet(in.minimumLevelWet() && random.nextBoolean());
    in.drainOpenEnd(out.drainValveOpen != rarely());
    in.drainClosedEnd(out.drainValveOpen == rarely());
    in.heaterCurrent(out.heaterRelay);
    in.generatorRunning(out.ultrasoundEnable != rarely());
    in.generatorFault(rarely());
    in.mainsPresent(!rarely());
    in.controlSensorCounts = rarely() ? random.nextInt(4096) : 1_750 + random.nextInt(30);
    in.cutOffSensorCounts = rarely() ? random.nextInt(4096) : in.controlSensorCounts;
    if (random.nextInt(3) == 0) {
      press();
    }
  }

  private void press() {
    in.command = Command.values()[random.nextInt(Command.values().length)];
    in.recipe = new Recipe(Programme.CUSTOM, 40_000, 20, 10);
    in.foilVerdict = FoilVerdict.MARKED;
    in.commandSequence++;
  }

  private boolean rarely() {
    return random.nextInt(200) == 0;
  }

  private static String text(Outputs o) {
    return o.heaterRelay
        + " "
        + o.cutOffRelay
        + " "
        + o.ultrasoundEnable
        + " "
        + o.drivePermille
        + " "
        + o.driveFrequencyHz
        + " "
        + o.drainValveOpen
        + " "
        + o.buzzer
        + " "
        + o.watchdogPulse
        + " "
        + o.panel.phase
        + " "
        + o.panel.fault
        + " "
        + o.panel.refusal
        + " "
        + o.panel.temperatureMilliC
        + " "
        + o.panel.temperatureValid
        + " "
        + o.panel.setpointMilliC
        + " "
        + o.panel.remainingMs
        + " "
        + o.panel.degassingRequired
        + " "
        + o.panel.lidOpen
        + " "
        + o.panel.solutionDue
        + " "
        + o.panel.keepingWarm;
  }
}
