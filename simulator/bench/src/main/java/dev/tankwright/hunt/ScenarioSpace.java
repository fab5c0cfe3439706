package dev.tankwright.hunt;

import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.Injection;
import dev.tankwright.campaign.Setting;
import dev.tankwright.campaign.Span;
import dev.tankwright.campaign.Variation;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** One scenario, over the moments of its own entries and tolerances. Immutable. */
final class ScenarioSpace implements Space {
  private final Scenario base;
  private final Requirement requirement;
  private final List<Span> moments;
  private final Variation tolerances;

  /**
   * Makes the space.
   *
   * @param shiftMillis how much earlier or later every entry may be, ms
   * @param spans the tolerances
   */
  ScenarioSpace(Scenario base, Requirement requirement, long shiftMillis, Map<Axis, Span> spans) {
    this.base = base;
    this.requirement = requirement;
    moments = base.timeline().stream().map(e -> span(e, shiftMillis)).toList();
    // Only bath and start of its scenarios are used; what it would inject is left out.
    Injection nothing = new Injection("nothing", new Action.Release(List.of()));
    tolerances = new Variation(base, nothing, Phase.STANDBY, spans, base.requirements());
  }

  private Span span(TimelineEntry entry, long shiftMillis) {
    long millis = delay(entry.when());
    // Not later than the run: a file could not say so.
    long latest = Math.min(millis + shiftMillis, base.durationMillis());
    return new Span(Math.max(0, millis - shiftMillis), Math.max(millis, latest));
  }

  private static long delay(When when) {
    if (when instanceof When.At at) {
      return at.millis();
    } else if (when instanceof When.Later then) {
      return then.delayMillis();
    } else if (when instanceof When.On on) {
      return on.delayMillis();
    } else if (when instanceof When.Crossing crossing) {
      return crossing.delayMillis();
    }
    throw new IllegalArgumentException("no moment is known of " + when);
  }

  private static When moved(When when, long millis) {
    if (when instanceof When.At) {
      return new When.At(millis);
    } else if (when instanceof When.Later) {
      return new When.Later(millis);
    } else if (when instanceof When.On on) {
      return new When.On(on.phase(), millis);
    } else if (when instanceof When.Crossing crossing) {
      return new When.Crossing(crossing.condition(), millis);
    }
    throw new IllegalArgumentException("no moment is known of " + when);
  }

  @Override
  public String name() {
    return base.title();
  }

  @Override
  public List<Coordinate> coordinates() {
    List<Coordinate> all = new ArrayList<>();
    for (int i = 0; i < moments.size(); i++) {
      if (!moments.get(i).isPoint()) {
        String entry = "entry " + (i + 1) + ", " + base.timeline().get(i).text();
        all.add(new Coordinate(entry, "ms"));
      }
    }
    tolerances.free().forEach(axis -> all.add(new Coordinate(axis.key(), axis.unit())));
    return all;
  }

  @Override
  public Scenario at(double[] shares) {
    long[] millis = millis(shares);
    List<TimelineEntry> entries = new ArrayList<>();
    for (int i = 0; i < millis.length; i++) {
      TimelineEntry entry = base.timeline().get(i);
      When when = moved(entry.when(), millis[i]);
      entries.add(
          new TimelineEntry(
              entry.name(), entry.from(), when, entry.repeat(), entry.action(), entry.place()));
    }
    Scenario off = tolerances.scenario(setting(shares));
    return base.withBath(off.bath())
        .withStart(off.start())
        .withTimeline(entries)
        .withRequirements(List.of(requirement));
  }

  private long[] millis(double[] shares) {
    long[] millis = new long[moments.size()];
    int next = 0;
    for (int i = 0; i < millis.length; i++) {
      Span span = moments.get(i);
      double value = span.isPoint() ? span.low() : span.at(shares[next++]);
      millis[i] =
          span.isPoint() ? (long) value : Math.round(value / Plant.STEP_MILLIS) * Plant.STEP_MILLIS;
    }
    return millis;
  }

  private Setting setting(double[] shares) {
    int own = coordinates().size() - tolerances.free().size();
    return tolerances.at(Arrays.copyOfRange(shares, own, shares.length), base.seed());
  }

  @Override
  public List<Double> values(double[] shares) {
    long[] millis = millis(shares);
    Stream.Builder<Double> free = Stream.builder();
    for (int i = 0; i < millis.length; i++) {
      if (!moments.get(i).isPoint()) {
        free.add((double) millis[i]);
      }
    }
    Setting setting = setting(shares);
    return Stream.concat(free.build(), tolerances.free().stream().map(setting::value)).toList();
  }

  @Override
  public OptionalInt needed() {
    return OptionalInt.empty();
  }
}
