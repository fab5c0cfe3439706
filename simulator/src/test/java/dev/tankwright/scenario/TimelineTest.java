package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Deed;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Each run is told as the moments at which phases begin; what is done is told as moment and name.
 */
class TimelineTest {
  private final List<TimelineEntry> entries = new ArrayList<>();
  private final TreeMap<Long, Phase> phases = new TreeMap<>();

  private TimelineTest entry(When when) {
    Deed deed = new Deed.Fill(entries.size() + 1, 20);
    entries.add(new TimelineEntry(when, deed, new Place(entries.size() + 1, 1)));
    return this;
  }

  private TimelineTest phase(long millis, Phase phase) {
    phases.put(millis, phase);
    return this;
  }

  private String run(long endMillis) {
    Timeline timeline = new Timeline(entries);
    List<String> done = new ArrayList<>();
    for (long millis = 0; millis <= endMillis; millis += 10) {
      long now = millis;
      timeline.step(
          now,
          phases.floorEntry(now).getValue(),
          entry -> done.add(entry.place().line() + "@" + now));
    }
    timeline.notDone().forEach(entry -> done.add(entry.place().line() + "@never"));
    return String.join(" ", done);
  }

  @Test
  void atEntriesAreIndependentOfTheList() {
    phase(0, Phase.STANDBY)
        .entry(new When.At(50))
        .entry(new When.At(20))
        .entry(new When.At(15))
        .entry(new When.At(0));
    assertEquals("4@0 2@20 3@20 1@50", run(100));
  }

  @Test
  void equalMomentsKeepTheOrderOfTheList() {
    phase(0, Phase.STANDBY)
        .entry(new When.At(20))
        .entry(new When.Then(0))
        .entry(new When.At(20))
        .entry(new When.Then(10));
    assertEquals("1@20 2@20 3@20 4@30", run(100));
  }

  @Test
  void onWaitsForThePhaseAndItsDelay() {
    phase(0, Phase.STANDBY)
        .phase(30, Phase.HEATING)
        .phase(60, Phase.DEGASSING)
        .entry(new When.At(20))
        .entry(new When.On(Phase.HEATING, 0))
        .entry(new When.On(Phase.DEGASSING, 25))
        .entry(new When.Then(20));
    assertEquals("1@20 2@30 3@90 4@110", run(200));
  }

  @Test
  void theFirstEntryCountsThePhaseOfTheStart() {
    phase(0, Phase.SELF_TEST).entry(new When.On(Phase.SELF_TEST, 10));
    assertEquals("1@10", run(50));
  }

  @Test
  void aStayThatBeganBeforeDoesNotCount() {
    phase(0, Phase.STANDBY)
        .phase(20, Phase.HEATING)
        .phase(60, Phase.PAUSED)
        .phase(80, Phase.HEATING)
        .entry(new When.At(40))
        .entry(new When.On(Phase.HEATING, 0));
    assertEquals("1@40 2@80", run(100));
  }

  @Test
  void aPhaseEnteredInTheVeryStepCounts() {
    phase(0, Phase.STANDBY)
        .phase(40, Phase.COMPLETE)
        .entry(new When.On(Phase.COMPLETE, 0))
        .entry(new When.On(Phase.COMPLETE, 0))
        .entry(new When.At(40))
        .entry(new When.On(Phase.COMPLETE, 10));
    assertEquals("1@40 2@40 3@40 4@50", run(100));
  }

  @Test
  void aDelayRunsOnWhenThePhaseIsLeft() {
    phase(0, Phase.STANDBY)
        .phase(20, Phase.CLEANING)
        .phase(30, Phase.PAUSED)
        .entry(new When.On(Phase.CLEANING, 40));
    assertEquals("1@60", run(100));
  }

  @Test
  void whatWaitsInVainIsTold() {
    phase(0, Phase.STANDBY)
        .entry(new When.On(Phase.LOCKOUT, 0))
        .entry(new When.Then(10))
        .entry(new When.At(20))
        .entry(new When.At(2000));
    assertEquals("3@20 1@never 2@never 4@never", run(100));
  }
}
