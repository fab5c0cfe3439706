package dev.tankwright.bench.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import dev.tankwright.events.ChainCheck;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every event that any scenario of the project publishes, against the rules of CloudEvents, our own
 * schemas and the channels of the AsyncAPI document; and its chain.
 */
class EveryScenarioEventsTest {
  private final Contract contract = new Contract();

  @TestFactory
  Stream<DynamicTest> shouldKeepTheContract() throws IOException {
    List<Path> scenarios = ScenarioEvents.files();
    assertTrue(scenarios.size() >= 20, "the project's scenarios are found");
    return scenarios.stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private void check(Path file) throws IOException, ScenarioException, NotAnEventException {
    ScenarioEvents.Ran ran = ScenarioEvents.run(file);
    Schema rules = Contract.cloudEvents();
    AsyncApi api = AsyncApi.read();
    ChainCheck chain = ChainCheck.fromStart();
    assertFalse(ran.events().isEmpty(), "the scenario has events");
    for (byte[] payload : ran.events()) {
      JsonNode event = Contract.JSON.readTree(payload);
      assertEquals(List.of(), Contract.faults(rules, event), event::toString);
      assertEquals(List.of(), contract.faults(event), event::toString);
      assertEquals(List.of(), api.faults("events", event), event::toString);
      assertEquals(List.of(), chain.take(ChainedEvent.read(payload)), event::toString);
    }
    assertTrue(chain.isWhole());
    record(ran.record());
  }

  // A scenario in which no cycle ends leaves no record.
  private void record(String json) throws IOException {
    if (!json.isEmpty()) {
      JsonNode record = Contract.JSON.readTree(json);
      Schema schema = contract.schema(record.path("schema").asText());
      assertEquals(List.of(), Contract.faults(schema, record), json);
    }
  }
}
