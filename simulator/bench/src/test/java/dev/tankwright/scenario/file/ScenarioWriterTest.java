package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.profile.ProfileText;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is read again as the very same scenario. */
class ScenarioWriterTest {
  private static final int RANDOM = 600;

  @TempDir private Path folder;

  @Test
  @DisplayName("random scenarios, every kind of action, moment and requirement among them")
  void random() throws ScenarioException {
    Set<Action.Kind> actions = EnumSet.noneOf(Action.Kind.class);
    Set<Class<?>> kinds = new HashSet<>();
    for (int seed = 0; seed < RANDOM; seed++) {
      RandomScenario random = new RandomScenario(seed);
      Scenario scenario = random.scenario();
      String text = ScenarioWriter.text(scenario, random.bathName());
      Scenario read = ScenarioReader.read("random.yaml", text.getBytes(UTF_8));
      SameScenario.check(scenario, read, "seed " + seed + "\n" + text);
      scenario.timeline().forEach(entry -> actions.add(entry.action().kind()));
      scenario.timeline().forEach(entry -> kinds.add(entry.when().getClass()));
      scenario.requirements().forEach(requirement -> kinds.add(requirement.getClass()));
    }
    assertEquals(EnumSet.allOf(Action.Kind.class), actions);
    assertEquals(4 + 7, kinds.size(), kinds::toString);
  }

  @Test
  @DisplayName("every scenario of the project")
  void library() throws IOException, ScenarioException {
    Path root = Path.of(System.getProperty("tankwright.root", "../.."));
    List<Path> files;
    try (Stream<Path> all = Files.walk(root.resolve("bench-tests/scenarios"))) {
      files = all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    int scenarios = 0;
    for (Path file : files) {
      Scenario scenario = ScenarioReader.read(file);
      SameScenario.check(scenario, again(scenario), file.toString());
      scenarios++;
    }
    assertTrue(scenarios >= 80, scenarios + " scenarios");
  }

  private Scenario again(Scenario scenario) throws IOException, ScenarioException {
    Path file = folder.resolve("again.yaml");
    Files.writeString(folder.resolve("bath.yaml"), ProfileText.of(scenario.bath()));
    Files.writeString(file, ScenarioWriter.text(scenario, profile(scenario.bath())));
    Scenario read = ScenarioReader.read(file);
    // A profile's file holds fewer digits than a bath; that is its own matter.
    assertEquals(ProfileText.asRead(scenario.bath()), ProfileText.asRead(read.bath()));
    return read.withBath(scenario.bath());
  }

  private static String profile(BathProfile bath) {
    return BuiltInBaths.names().stream()
        .filter(name -> BuiltInBaths.byName(name).orElseThrow().equals(bath))
        .findFirst()
        .orElse("bath.yaml");
  }

  @Test
  @DisplayName("a warmth in °F, which has no end in °C, comes back to the last bit")
  void endless() throws ScenarioException {
    String yaml =
        ScenarioReaderTest.SMALL.replaceFirst("temperature: [^\n}]*", "temperature: 66.1 °F");
    Scenario scenario = ScenarioReader.read("f.yaml", yaml.getBytes(UTF_8));
    assertTrue(Double.toString(scenario.start().celsius()).length() > 15, "it has an end");
    String text = ScenarioWriter.text(scenario, BuiltInBaths.USUAL);
    Scenario read = ScenarioReader.read("f.yaml", text.getBytes(UTF_8));
    assertEquals(scenario.start(), read.start());
  }

  @Test
  @DisplayName("what no file can say is refused, not left out")
  void refused() throws ScenarioException {
    List<Pin> two = List.of(Pin.MAINS, Pin.COUNTER);
    for (List<Pin> pins : List.of(two, List.<Pin>of())) {
      TimelineEntry entry =
          new TimelineEntry(new When.At(0), new Action.Release(pins), Place.START);
      Scenario scenario =
          ScenarioReader.read("f.yaml", ScenarioReaderTest.SMALL.getBytes(UTF_8))
              .withTimeline(List.of(entry));
      IllegalArgumentException e =
          assertThrows(
              IllegalArgumentException.class,
              () -> ScenarioWriter.text(scenario, BuiltInBaths.USUAL));
      assertTrue(e.getMessage().contains("not " + pins.size() + " of them"), e.getMessage());
    }
  }

  @Test
  @DisplayName("each class of action has a kind of its own")
  void kinds() {
    List<Class<?>> classes = Arrays.asList(Action.class.getPermittedSubclasses());
    assertEquals(classes.size(), Action.Kind.values().length);
    List<String> keys = new ArrayList<>();
    for (Action.Kind kind : Action.Kind.values()) {
      keys.add(kind.key());
    }
    assertEquals(keys.size(), new HashSet<>(keys).size(), keys::toString);
  }
}
