package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.profile.ProfileKeys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The reference and the vocabulary say of keys what the table of keys says. */
class KeyTablesTest {
  private static final List<KeyBlock> BLOCKS = new ArrayList<>(ScenarioKeys.blocks());

  static {
    BLOCKS.add(ProfileKeys.BLOCK);
  }

  @Test
  @DisplayName("the tables of keys in the reference are up to date")
  void tables() throws IOException {
    String page = Page.read(Examples.PAGE).text();
    String wanted = KeyTables.refreshed(page);
    Path target = Files.createDirectories(Page.root().resolve("bench-tests/target"));
    Files.writeString(target.resolve("scenarios.md"), wanted);
    assertEquals(
        wanted, page, Examples.PAGE + " should be what bench-tests/target/scenarios.md is");
  }

  @Test
  @DisplayName("every key stands in the vocabulary with its origin")
  void vocabulary() {
    Set<List<String>> rows = new HashSet<>();
    for (String section : List.of("Scenario keys", "Requirement words", "Bath profiles")) {
      for (List<String> row : Page.read("docs/vocabulary.md").section(section).rows()) {
        rows.add(List.of(Page.plain(row.get(0)), row.get(1)));
      }
    }
    List<String> missing = new ArrayList<>();
    for (KeyBlock block : BLOCKS) {
      for (Key key : block.keys()) {
        if (!rows.contains(List.of(key.name(), key.origin().word()))) {
          missing.add(key.name() + " of " + block.called() + ", " + key.origin().word());
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  @DisplayName(
      "no key's old name is another key of its block, and no key is younger than the project")
  void names() {
    String version = System.getProperty("tankwright.version", "0.1.0");
    for (KeyBlock block : BLOCKS) {
      for (Key key : block.keys()) {
        key.former().forEach(old -> assertTrue(block.find(old).isEmpty(), old));
        assertTrue(key.since().compareTo(version) <= 0, key.name() + " since " + key.since());
      }
    }
  }
}
