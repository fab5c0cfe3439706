package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.EventType;
import dev.tankwright.events.mqtt.DeviceStatus;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.StatusMessage;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class EventsPageTest {
  private final Page page = Page.read("docs/events.md");

  @Test
  @DisplayName("every example event is the output of a run, to the byte")
  void examples() throws ScenarioException {
    Set<String> real = new HashSet<>();
    real.addAll(Examples.printedRun().events());
    real.addAll(Examples.run("first-cycle.yaml").events());
    real.addAll(Examples.run("single-faults/sensor-open-circuit.yaml").events());
    real.addAll(Examples.run("chemistry/solution-too-old.yaml").events());
    real.addAll(Examples.run("single-faults/memory-damaged.yaml").events());
    List<String> printed = lines("{\"specversion\"");
    assertTrue(real.containsAll(printed), () -> "no run gives " + without(printed, real));
  }

  @Test
  @DisplayName("every event type has a row and, but for those that no run shows, an example")
  void types() {
    List<String> types = Arrays.stream(EventType.values()).map(EventType::type).toList();
    List<String> rows =
        page.section("Event types").rows().stream().map(row -> Page.plain(row.get(0))).toList();
    assertEquals(types, rows);
    List<String> missing = new ArrayList<>();
    for (String type : types) {
      if (lines("{\"specversion\"").stream().noneMatch(line -> line.contains(type))) {
        missing.add(type);
      }
    }
    assertEquals(List.of(EventType.CLOCK_SET.type(), EventType.NOTICES_LOST.type()), missing);
  }

  @Test
  @DisplayName("the record is that of the first cycle, to the byte")
  void record() throws ScenarioException {
    List<String> indented =
        page.fences("json").stream().filter(text -> text.startsWith("{\n")).toList();
    assertEquals(List.of(Examples.run("first-cycle.yaml").result().recordJson()), indented);
  }

  @Test
  @DisplayName("topics and status are those of the publisher")
  void topics() {
    DeviceTopics topics = new DeviceTopics("instrument-room-1");
    assertTrue(page.text().contains("`" + topics.events() + "`"), topics::events);
    assertTrue(page.text().contains("`" + topics.status() + "`"), topics::status);
    StatusMessage message = new StatusMessage(1, 1);
    DeviceStatus cleaning = new DeviceStatus("CLEANING", false, false);
    for (byte[] status : List.of(message.online(cleaning), message.stopped(), message.lastWill())) {
      String json = new String(status, StandardCharsets.UTF_8);
      assertTrue(page.text().contains(json), () -> "missing: " + json);
    }
  }

  private List<String> lines(String start) {
    return page.fences("json").stream()
        .flatMap(String::lines)
        .filter(line -> line.startsWith(start))
        .toList();
  }

  private static List<String> without(List<String> printed, Set<String> real) {
    return printed.stream().filter(line -> !real.contains(line)).toList();
  }
}
