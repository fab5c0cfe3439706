package dev.tankwright.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.events.HostMemory;
import dev.tankwright.extent.Evidence;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.run.EventHost;
import dev.tankwright.scenario.run.RunLoop;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.run.Timeline;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Days differ from each other, and are the same again. */
class DayPlanTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final long WORKING_DAY = 8 * 3_600_000L;
  private static final long HOUR = 3_600_000;

  private static DayPlan plan(long seed, int number, LocalDate date, long length) {
    return DayPlan.of("bath-1", seed, number, date, length);
  }

  private static List<CycleEvent> events(Scenario scenario) {
    List<CycleEvent> events = new ArrayList<>();
    EventHost host =
        new EventHost(scenario, "0", HostMemory.NEW, (event, memory) -> events.add(event));
    RunLoop day = new RunLoop(scenario, new Timeline(scenario.timeline()), host);
    for (long millis = 0; !day.isOver(); millis += 7_770) {
      day.to(millis);
    }
    return events;
  }

  @Test
  @DisplayName("the same seed, number and date give the same events, any other gives others")
  void seeds() {
    List<CycleEvent> events = events(plan(5, 3, DAY, HOUR).scenario());
    assertTrue(events.size() > 5, events.size() + " events");
    assertEquals(events, events(plan(5, 3, DAY, HOUR).scenario()));
    assertNotEquals(events, events(plan(6, 3, DAY, HOUR).scenario()));
    assertNotEquals(events, events(plan(5, 4, DAY, HOUR).scenario()));
    assertNotEquals(events, events(plan(5, 3, DAY.plusDays(1), HOUR).scenario()));
  }

  @Test
  @DisplayName("no two of two hundred baths do the same")
  void allDiffer() {
    Set<Object> seen = new HashSet<>();
    Set<Long> begins = new HashSet<>();
    for (int number = 1; number <= 200; number++) {
      DayPlan plan = plan(1, number, DAY, WORKING_DAY);
      assertTrue(seen.add(plan.scenario().timeline()), "bath " + number);
      assertTrue(plan.beginMillis() + plan.scenario().durationMillis() <= WORKING_DAY);
      begins.add(plan.beginMillis());
    }
    assertTrue(begins.size() > 150, begins.size() + " different moments of switching on");
  }

  @Test
  @DisplayName("a day in pieces has the events of a run in one")
  void inPieces() {
    Scenario scenario = plan(1, 1, DAY, HOUR).scenario();
    List<CycleEvent> whole = new ArrayList<>();
    new ScenarioRun(scenario, "0", whole::add).toEnd(millis -> {});
    assertEquals(whole, events(scenario));
  }

  @Test
  @Evidence("the whole days of 24 baths; the hours of the other tests stand for them")
  @DisplayName("in the days of a fleet everything happens that people and small faults bring about")
  void everythingHappens() {
    Set<EventType> seen = EnumSet.noneOf(EventType.class);
    long started = 0;
    long completed = 0;
    for (int number = 1; number <= 24; number++) {
      for (CycleEvent event : events(plan(1, number, DAY, WORKING_DAY).scenario())) {
        seen.add(event.type());
        started += event.type() == EventType.CYCLE_STARTED ? 1 : 0;
        completed += event.type() == EventType.CYCLE_COMPLETED ? 1 : 0;
      }
    }
    Set<EventType> never = EnumSet.complementOf(EnumSet.copyOf(seen));
    // A fleet's clock is right, its memories are sound, and its ring of notices is drained in time.
    never.removeAll(
        EnumSet.of(EventType.CLOCK_SET, EventType.MEMORY_TROUBLE, EventType.NOTICES_LOST));
    // Nothing grows old in one day.
    never.removeAll(EnumSet.of(EventType.SOLUTION_DUE, EventType.DRAIN_DUE, EventType.FOIL_DUE));
    assertEquals(EnumSet.noneOf(EventType.class), never);
    assertTrue(completed > started * 0.8, completed + " of " + started + " cycles completed");
    assertTrue(completed < started, "some do not");
  }
}
