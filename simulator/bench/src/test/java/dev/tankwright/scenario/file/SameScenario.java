package dev.tankwright.scenario.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.List;

/** Asserts that two scenarios say the same, wherever in a file they say it. */
final class SameScenario {
  private SameScenario() {}

  static void check(Scenario wanted, Scenario read, String which) {
    assertEquals(limits(wanted.profile()), limits(read.profile()), which);
    assertEquals(placeless(wanted), placeless(read).withProfile(wanted.profile()), which);
  }

  private static List<String> limits(DeviceProfile profile) {
    List<String> limits = new ArrayList<>(List.of("short-time " + profile.isShortTime()));
    for (Parameter parameter : Parameter.values()) {
      limits.add(parameter.key() + " " + profile.get(parameter));
    }
    return limits;
  }

  private static Scenario placeless(Scenario s) {
    return new Scenario(
        "",
        "",
        s.title(),
        s.purpose(),
        s.device(),
        s.clock(),
        s.seed(),
        s.durationMillis(),
        s.bath(),
        s.start(),
        s.profile(),
        s.timeline().stream().map(SameScenario::placeless).toList(),
        s.requirements().stream().map(SameScenario::placeless).toList(),
        s.contents());
  }

  private static TimelineEntry placeless(TimelineEntry e) {
    return new TimelineEntry(e.name(), e.from(), e.when(), e.repeat(), e.action(), Place.START);
  }

  private static Requirement placeless(Requirement requirement) {
    Requirement.Label label =
        new Requirement.Label(requirement.label().name(), requirement.label().id(), Place.START);
    if (requirement instanceof Requirement.Always r) {
      return new Requirement.Always(label, r.condition(), r.during());
    } else if (requirement instanceof Requirement.Never r) {
      return new Requirement.Never(label, r.condition(), r.during());
    } else if (requirement instanceof Requirement.Eventually r) {
      return new Requirement.Eventually(label, r.condition(), r.beforeMillis());
    } else if (requirement instanceof Requirement.Within r) {
      return new Requirement.Within(label, r.limitMillis(), r.after(), r.holds());
    } else if (requirement instanceof Requirement.Stays r) {
      return new Requirement.Stays(label, r.condition(), r.forMillis(), r.after());
    } else if (requirement instanceof Requirement.Until r) {
      return new Requirement.Until(label, r.condition(), r.end(), r.after());
    }
    Requirement.Count r = (Requirement.Count) requirement;
    return new Requirement.Count(label, r.condition(), r.atLeast(), r.atMost());
  }
}
