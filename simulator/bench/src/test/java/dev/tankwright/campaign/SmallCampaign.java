package dev.tankwright.campaign;

import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A campaign of 60 simulated seconds a case, in files of its own. */
final class SmallCampaign {
  static final String BASE =
      """
      scenario: A minute of cleaning
      purpose: Goes from standby to complete in a minute.
      seed: 3
      duration: 60 s
      bath: {fill: 4.5 L, temperature: 42 °C}
      timeline:
        - at: 1 s
          command: FRESH_SOLUTION
        - later: 1 s
          command: START
          programme: MEDIUM
          degas: 8 s
          clean: 20 s
        - on: CLEANING
          after: 4 s
          lid: open
        - later: 5 s
          lid: closed
        - later: 2 s
          command: RESUME
      requirements:
        - name: No ultrasound under an open lid
          id: SR-01
          never: ultrasound and lid-open
        - name: The cycle completes
          eventually: phase = COMPLETE
          before: 55 s
      """;

  static final String CAMPAIGN =
      """
      campaign: Small
      purpose: Shows that campaigns run.
      seed: 9
      base: base.yaml
      faults:
        - control-sensor-open
        - lid-make-contact-broken
        - break: drain-leaking
          size: 100 %
          for: 2 s
      phases: [STANDBY, DEGASSING, CLEANING]
      moments:
        sample: 2
      tolerances:
        draws: 3
        heater: 10 %
        mains: 10 %
        ambient: 10 °C to 35 °C
        sensors: 100 %
        fill: 5 %
        relay-delay: 10 ms to 50 ms
      requirements:
        - name: The solution stays cool
          always: liquid-temperature < 60 °C
        - name: Lockout is silent
          within: 50 ms
          after: phase = LOCKOUT
          holds: not ultrasound
      """;

  private SmallCampaign() {}

  /** Writes both files and gives the campaign's. */
  static Path write(Path folder, String campaign) throws IOException {
    Files.writeString(folder.resolve("base.yaml"), BASE);
    return Files.writeString(folder.resolve("small.yaml"), campaign);
  }

  static Plan plan(Path folder) throws IOException, ScenarioException, PlanException {
    return new Plan(CampaignReader.read(write(folder, CAMPAIGN)));
  }

  /** Runs all cases of a share, one after the other. */
  static List<CaseResult> run(Plan plan, Shard shard) {
    List<CaseResult> results = new ArrayList<>();
    for (int number = 0; number < plan.cases(); number++) {
      if (shard.has(number)) {
        results.add(plan.run(number));
      }
    }
    return results;
  }

  /** Leaves the results of a share in a folder, as a finished run does. */
  static Path leave(Path folder, Plan plan, Shard shard, String version)
      throws IOException, ResultFileException {
    About about = plan.about(version, shard);
    try (ResultStore store = ResultStore.open(folder, about)) {
      store.begin(false);
      store.end(CampaignResult.of(about, run(plan, shard)));
    }
    return folder;
  }
}
