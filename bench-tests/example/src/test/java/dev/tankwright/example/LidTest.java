package dev.tankwright.example;

import static dev.tankwright.timeline.Signals.heater;
import static dev.tankwright.timeline.Signals.lidOpen;
import static dev.tankwright.timeline.Signals.liquidTemperature;
import static dev.tankwright.timeline.Signals.phase;
import static dev.tankwright.timeline.Signals.ultrasound;
import static dev.tankwright.timeline.Times.millis;
import static dev.tankwright.timeline.Times.minutes;
import static dev.tankwright.timeline.Times.seconds;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.timeline.Bench;
import dev.tankwright.timeline.Require;
import org.junit.jupiter.api.Test;

/** What opening the lid does to a running cycle. */
class LidTest {
  private final Bench bench = Bench.sixLitre();

  @Test
  void openingTheLidStopsTheUltrasound() {
    bench
        .fill(4.5, 38)
        .freshSolution()
        .start(Programme.MEDIUM)
        .until(Phase.CLEANING)
        .openLid()
        .within(millis(100))
        .expect(ultrasound().off())
        .expect(phase().is(Phase.PAUSED));
  }

  @Test
  void closingTheLidRestartsNothing() {
    bench
        .fill(4.5, 38)
        .freshSolution()
        .start(Programme.MEDIUM)
        .until(Phase.CLEANING)
        .openLid()
        .pass(seconds(5))
        .closeLid()
        .throughout(seconds(30))
        .expect(ultrasound().off())
        .press(Command.RESUME)
        .within(seconds(30))
        .expect("phase = CLEANING and ultrasound");
  }

  @Test
  void aWholeCycleStaysBelowTheCutOff() {
    bench
        .require(Require.always("Below the cut-off", liquidTemperature().below(70)))
        .require(
            Require.within("Nothing under an open lid", millis(20), lidOpen().on(), heater().off()))
        .fill(4.5, 30)
        .freshSolution()
        .start(Programme.LIGHT)
        .until(Phase.CLEANING, minutes(40))
        .openLid()
        .pass(seconds(1))
        .closeLid()
        .pass(seconds(1))
        .press(Command.RESUME)
        .until(Phase.COMPLETE, minutes(20))
        .judge();
  }
}
