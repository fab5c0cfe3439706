package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.key.FileKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.YamlNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** Reads the outermost keys of a scenario file and puts the scenario together. */
final class DocumentReader {
  private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2099-12-31T23:59:59Z");

  private final String fileName;
  private final Sources sources;
  private final Problems problems;

  DocumentReader(String fileName, Sources sources, Problems problems) {
    this.fileName = fileName;
    this.sources = sources;
    this.problems = problems;
  }

  Scenario read(YamlNode root) throws ScenarioException {
    if (!(root instanceof YamlNode.Keys keys)) {
      throw problems.stop(
          root.place(), "a scenario begins with 'scenario:' and its title; here is " + root.noun());
    }
    Fields fields = new Fields(keys, FileKeys.BLOCK, problems);
    fields.lacksRequired();
    Optional<String> title = fields.line(FileKeys.SCENARIO);
    Optional<String> purpose = fields.line(FileKeys.PURPOSE);
    // The longest duration stands in for one that is wrong, so that the rest can be checked.
    long duration = fields.steps(FileKeys.DURATION).orElse(Scenario.LONGEST_MILLIS);
    FileChoice files = new FileChoice(fileName, problems);
    BathProfile bathProfile = new ProfileChoice(files, problems, sources).read(fields);
    String brim = Amount.plain(bathProfile.levels().brimLitres());
    StockReader stock = new StockReader(fields, problems);
    Optional<BathStart> bath =
        fields
            .node(FileKeys.BATH)
            .flatMap(node -> new BathReader(brim, problems).read(node, stock));
    Chemistry chemistry = stock.chemistry();
    Contents contents = stock.contents();
    DeviceProfile profile =
        fields
            .node(FileKeys.CONTROLLER)
            .map(new ControllerReader(problems)::read)
            .orElseGet(DeviceProfile::sixLitre);
    List<TimelineEntry> timeline =
        fields
            .node(FileKeys.TIMELINE)
            .map(new TimelineReader(profile, brim, chemistry, duration, problems)::read)
            .orElse(List.of());
    List<Requirement> requirements =
        fields
            .node(FileKeys.REQUIREMENTS)
            .map(new RequirementsReader(duration, problems)::read)
            .orElse(List.of());
    String device = fields.form(FileKeys.DEVICE).orElse(FileKeys.DEVICE.standard());
    Instant clock =
        fields
            .text(FileKeys.CLOCK)
            .flatMap(this::clock)
            .orElse(Instant.parse(FileKeys.CLOCK.standard()));
    long seed = fields.whole(FileKeys.SEED).orElse(Long.parseLong(FileKeys.SEED.standard()));
    problems.throwIfAny();
    stock.remarkIdle(timeline, bath.orElseThrow());
    return new Scenario(
        fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1),
        sources.checksum(),
        title.orElseThrow(),
        purpose.orElseThrow(),
        device,
        clock,
        seed,
        duration,
        bathProfile,
        bath.orElseThrow(),
        profile,
        timeline,
        requirements,
        contents);
  }

  private Optional<Instant> clock(YamlNode.Text text) {
    try {
      Instant clock = OffsetDateTime.parse(text.value()).toInstant();
      if (!clock.isBefore(EARLIEST) && !clock.isAfter(LATEST)) {
        return Optional.of(clock);
      }
    } catch (DateTimeException e) {
      // Reported below, like a moment out of range.
    }
    problems.add(
        text.place(),
        "clock is "
            + Quote.of(text.value())
            + "; it must be a moment with its offset in the years 2000 to 2099, for example "
            + FileKeys.CLOCK.example());
    return Optional.empty();
  }
}
