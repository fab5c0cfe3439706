package dev.tankwright.scenario.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Each run is told as the moments at which phases begin; what is done is told as moment and name.
 */
class TimelineTest {
  private final List<TimelineEntry> entries = new ArrayList<>();
  private final TreeMap<Long, Phase> phases = new TreeMap<>();

  private long warmFrom = Long.MAX_VALUE;
  private long warmTo = Long.MAX_VALUE;

  private TimelineTest entry(When when) {
    return entry("", "", when, null);
  }

  private TimelineTest entry(String name, String from, When when, Repeat repeat) {
    Action action = new Action.Fill(entries.size() + 1, 20);
    Place place = new Place(entries.size() + 1, 1);
    entries.add(new TimelineEntry(name, from, when, Optional.ofNullable(repeat), action, place));
    return this;
  }

  private static When warm(long delay) {
    return new When.Crossing(Condition.of("heater"), delay);
  }

  private static Repeat every(long millis, long times) {
    return new Repeat(millis, OptionalLong.of(times), OptionalLong.empty());
  }

  private TimelineTest warm(long from, long to) {
    warmFrom = from;
    warmTo = to;
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
          signal -> now >= warmFrom && now < warmTo ? 1 : 0,
          entry -> done.add(entry.place().line() + "@" + now));
    }
    for (Timeline.Undone undone : timeline.undone()) {
      String times = undone.times() == 0 ? "never" : "only" + undone.times();
      done.add(undone.entry().place().line() + "@" + times);
    }
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
        .entry(new When.Later(0))
        .entry(new When.At(20))
        .entry(new When.Later(10));
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
        .entry(new When.Later(20));
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
        .entry(new When.Later(10))
        .entry(new When.At(20))
        .entry(new When.At(2000));
    assertEquals("3@20 1@never 2@never 4@never", run(100));
  }

  @Test
  void aCrossingCountsFromTheMomentOfTheEntryBefore() {
    phase(0, Phase.STANDBY).warm(40, 60).entry(new When.At(20)).entry(warm(0)).entry(warm(0));
    assertEquals("1@20 2@40 3@40", run(100));
  }

  @Test
  void aCrossingInTheVeryStepOfTheEntryBeforeCounts() {
    phase(0, Phase.STANDBY).warm(40, 60).entry(new When.At(40)).entry(warm(10));
    assertEquals("1@40 2@50", run(100));
  }

  @Test
  void aConditionThatHeldBeforeIsNoCrossing() {
    phase(0, Phase.STANDBY).warm(20, 60).entry(new When.At(40)).entry(warm(0));
    assertEquals("1@40 2@never", run(100));
  }

  @Test
  void aConditionThatHoldsInTheFirstStepBecameTrueThere() {
    phase(0, Phase.STANDBY).warm(0, 20).entry(warm(30));
    assertEquals("1@30", run(100));
  }

  @Test
  void aRepeatedEntryIsDoneSoOftenAndOnlyThenIsWaitedForNoMore() {
    phase(0, Phase.STANDBY).entry("", "", new When.At(10), every(20, 3)).entry(new When.Later(5));
    assertEquals("1@10 1@30 1@50 2@60", run(100));
  }

  @Test
  void aRepeatedEntryKeepsItsRhythmFromItsMomentNotFromItsStep() {
    phase(0, Phase.STANDBY).entry("", "", new When.At(5), every(15, 4));
    assertEquals("1@10 1@20 1@40 1@50", run(100));
  }

  @Test
  void aRepeatedEntryEndsAtItsLatestMomentOrWithTheRun() {
    Repeat until = new Repeat(20, OptionalLong.of(9), OptionalLong.of(50));
    Repeat endless = new Repeat(40, OptionalLong.empty(), OptionalLong.empty());
    phase(0, Phase.STANDBY)
        .entry("", "", new When.At(10), until)
        .entry(new When.Later(0))
        .entry("", "", new When.At(20), endless)
        .entry("", "", new When.At(90), every(10, 5))
        .entry("", "", new When.At(60), until);
    assertEquals("1@10 3@20 1@30 1@50 2@50 3@60 4@90 3@100 4@100 4@only2 5@never", run(100));
  }

  @Test
  void anEntryCanWaitForANamedOneOrForNone() {
    phase(0, Phase.STANDBY)
        .phase(30, Phase.HEATING)
        .phase(70, Phase.STANDBY)
        .phase(80, Phase.HEATING)
        .entry("first", "", new When.At(20), null)
        .entry(new When.At(50))
        .entry("", "first", new When.Later(20), null)
        .entry("", "first", new When.On(Phase.HEATING, 0), null)
        .entry("", "start", new When.On(Phase.STANDBY, 10), null)
        .entry(new When.On(Phase.HEATING, 0));
    assertEquals("5@10 1@20 4@30 6@30 3@40 2@50", run(100));
  }

  @Test
  void aNameThatNoEarlierEntryHasIsRefused() {
    phase(0, Phase.STANDBY).entry("", "second", new When.Later(0), null);
    entry("second", "", new When.At(0), null);
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> new Timeline(entries));
    assertEquals("no entry before '1 L filled at 20 °C' is named 'second'", e.getMessage());
  }
}
