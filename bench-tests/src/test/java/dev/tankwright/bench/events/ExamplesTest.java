package dev.tankwright.bench.events;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The published examples are real output: of a short list of scenarios, and for what no scenario
 * shows, of a controller on inputs made for it.
 */
class ExamplesTest {
  /** A scenario is named here because it is the first of the list that shows some type. */
  private static final List<String> SCENARIOS =
      List.of(
          "first-cycle.yaml",
          "single-faults/memory-damaged.yaml",
          "single-faults/sensor-open-circuit.yaml",
          "normal-use/foil-check-healthy.yaml",
          "chemistry/solution-too-old.yaml");

  private static Path folder() {
    return Contract.folder().resolve("examples");
  }

  private static Map<String, String> real() throws IOException, ScenarioException {
    Map<String, String> examples = new TreeMap<>();
    Path scenarios = Path.of(System.getProperty("tankwright.root"), "bench-tests", "scenarios");
    for (String scenario : SCENARIOS) {
      for (byte[] event : ScenarioEvents.run(scenarios.resolve(scenario)).events()) {
        put(examples, event);
      }
    }
    for (CycleEvent event : EventfulDay.events()) {
      put(examples, CloudEventJson.toJson(event));
    }
    return examples;
  }

  private static void put(Map<String, String> examples, byte[] event) throws IOException {
    String type = Contract.JSON.readTree(event).path("type").asText();
    examples.putIfAbsent(type + ".json", new String(event, UTF_8));
  }

  @Test
  @DisplayName("every type has an example, and it is what a run gives, to the byte")
  void examples() throws IOException, ScenarioException {
    Map<String, String> printed = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder())) {
      for (Path file : files.toList()) {
        printed.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    Map<String, String> real = real();
    keep(real);
    assertEquals(
        Arrays.stream(EventType.values()).map(t -> t.type() + ".json").sorted().toList(),
        List.copyOf(real.keySet()));
    assertEquals(real, printed);
  }

  // What would be right, for whoever has changed what is said on purpose.
  private static void keep(Map<String, String> real) throws IOException {
    Path target =
        Path.of(System.getProperty("tankwright.root"), "bench-tests", "target", "event-examples");
    Files.createDirectories(target);
    for (Map.Entry<String, String> example : real.entrySet()) {
      Files.writeString(target.resolve(example.getKey()), example.getValue());
    }
  }
}
