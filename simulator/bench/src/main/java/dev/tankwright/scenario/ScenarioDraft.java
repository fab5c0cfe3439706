package dev.tankwright.scenario;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import java.util.List;

/** A scenario of which some parts are exchanged before it is one again. For one thread, at once. */
final class ScenarioDraft {
  private final Scenario origin;
  String title;
  String purpose;
  long seed;
  long durationMillis;
  BathProfile bath;
  BathStart start;
  DeviceProfile profile;
  List<TimelineEntry> timeline;
  List<Requirement> requirements;

  ScenarioDraft(Scenario origin) {
    this.origin = origin;
    title = origin.title();
    purpose = origin.purpose();
    seed = origin.seed();
    durationMillis = origin.durationMillis();
    bath = origin.bath();
    start = origin.start();
    profile = origin.profile();
    timeline = origin.timeline();
    requirements = origin.requirements();
  }

  Scenario scenario() {
    return new Scenario(
        origin.file(),
        origin.sha256(),
        title,
        purpose,
        origin.device(),
        origin.clock(),
        seed,
        durationMillis,
        bath,
        start,
        profile,
        timeline,
        requirements,
        origin.contents());
  }
}
