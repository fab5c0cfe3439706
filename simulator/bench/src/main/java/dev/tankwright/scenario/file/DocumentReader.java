package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.key.Values;
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
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Reads the outermost keys of a scenario file and puts the scenario together. */
final class DocumentReader {
  private static final Pattern DEVICE = Pattern.compile("[a-z0-9-]{1,40}");
  private static final Pattern SEED = Pattern.compile("[0-9]{1,16}");
  private static final Instant CLOCK = Instant.parse("2026-01-05T08:00:00Z");
  private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2099-12-31T23:59:59Z");

  private final String fileName;
  private final Sources sources;
  private final Problems problems;
  private final Values values;

  DocumentReader(String fileName, Sources sources, Problems problems) {
    this.fileName = fileName;
    this.sources = sources;
    this.problems = problems;
    values = new Values(problems);
  }

  Scenario read(YamlNode root) throws ScenarioException {
    if (!(root instanceof YamlNode.Keys keys)) {
      throw problems.stop(
          root.place(), "a scenario begins with 'scenario:' and its title; here is " + root.noun());
    }
    Fields fields = new Fields(keys, "the scenario", ScenarioKeys.FILE, problems);
    fields.lacks("bath", "bath: {fill: 4.5 L, temperature: 19 °C}");
    fields.lacks("requirements", "requirements: [{name: No heat, never: heater}]");
    Optional<String> title = line(fields, "scenario", "scenario: First cycle", 120);
    Optional<String> purpose = line(fields, "purpose", "purpose: Shows a cycle", 1000);
    long duration = duration(fields);
    FileChoice files = new FileChoice(fileName, problems);
    BathProfile bathProfile = new ProfileChoice(files, problems, sources).read(fields);
    String brim = Amount.plain(bathProfile.levels().brimLitres());
    StockReader stock = new StockReader(fields, problems);
    Optional<BathStart> bath =
        fields.node("bath").flatMap(node -> new BathReader(brim, problems).read(node, stock));
    Chemistry chemistry = stock.chemistry();
    Contents contents = stock.contents();
    DeviceProfile profile =
        fields
            .node("controller")
            .map(new ControllerReader(problems)::read)
            .orElseGet(DeviceProfile::sixLitre);
    List<TimelineEntry> timeline =
        fields
            .node("timeline")
            .map(new TimelineReader(profile, brim, chemistry, duration, problems)::read)
            .orElse(List.of());
    List<Requirement> requirements =
        fields
            .node("requirements")
            .map(new RequirementsReader(duration, problems)::read)
            .orElse(List.of());
    String device = fields.text("device").flatMap(this::device).orElse("bench-1");
    Instant clock = fields.text("clock").flatMap(this::clock).orElse(CLOCK);
    long seed = fields.text("seed").flatMap(this::seed).orElse(1L);
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

  private Optional<String> line(Fields fields, String key, String example, int longest) {
    return fields.required(key, example).flatMap(text -> values.line(text, key, longest));
  }

  /** The longest duration stands in for one that is wrong, so that the rest can be checked. */
  private long duration(Fields fields) {
    Optional<YamlNode.Text> text = fields.required("duration", "duration: 70 min");
    OptionalLong millis =
        text.isEmpty()
            ? OptionalLong.empty()
            : values.millis(text.get(), "duration", Values.MILLI, Scenario.LONGEST_MILLIS);
    return millis.orElse(Scenario.LONGEST_MILLIS);
  }

  private Optional<String> device(YamlNode.Text text) {
    if (DEVICE.matcher(text.value()).matches()) {
      return Optional.of(text.value());
    }
    problems.add(
        text.place(),
        "device is "
            + Quote.of(text.value())
            + "; it must be 1 to 40 small letters, digits and hyphens, for example bench-1");
    return Optional.empty();
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
            + CLOCK);
    return Optional.empty();
  }

  private Optional<Long> seed(YamlNode.Text text) {
    if (SEED.matcher(text.value()).matches()) {
      long seed = Long.parseLong(text.value());
      if (seed <= Scenario.HIGHEST_SEED) {
        return Optional.of(seed);
      }
    }
    problems.add(
        text.place(),
        "seed is "
            + Quote.of(text.value())
            + "; it must be a whole number from 0 to "
            + Scenario.HIGHEST_SEED);
    return Optional.empty();
  }
}
