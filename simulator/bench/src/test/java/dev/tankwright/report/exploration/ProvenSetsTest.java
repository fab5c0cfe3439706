package dev.tankwright.report.exploration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.explore.SetResult;
import dev.tankwright.explore.Violation;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.rule.Rule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProvenSetsTest {
  private static final String HEADINGS =
      "set,states,transitions,depth,bytes,seconds,fingerprint\r\n";

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void place() {
    file = folder.resolve("proven.csv");
  }

  private static SetResult set(String name, boolean complete, List<Violation> violations) {
    return new SetResult(name, 10, 5_000_000_000L, 3, 400, complete, violations, "");
  }

  private static SetResult whole(String name) {
    return set(name, true, List.of());
  }

  private void put(SetResult result, String fingerprint) {
    try (ProvenSets sets = ProvenSets.open(file, fingerprint)) {
      sets.add(result, 7);
    }
  }

  private Optional<SetResult> found(String name, String fingerprint) {
    try (ProvenSets sets = ProvenSets.open(file, fingerprint)) {
      return sets.find(name);
    }
  }

  @Test
  @DisplayName("a set that was proven is found again, for the same fingerprint alone")
  void again() throws IOException {
    put(whole("counter and commands"), "a1");
    put(whole("none"), "a1");
    assertEquals(Optional.of(whole("none")), found("none", "a1"));
    assertEquals(Optional.of(whole("counter and commands")), found("counter and commands", "a1"));
    assertEquals(Optional.empty(), found("none", "b2"));
    assertEquals(Optional.empty(), found("counter", "a1"));
    assertEquals(
        HEADINGS
            + "counter and commands,10,5000000000,3,400,7,a1\r\nnone,10,5000000000,3,400,7,a1"
            + "\r\n",
        Files.readString(file));
  }

  @Test
  @DisplayName("a set that was stopped, or violates a rule, is not recorded")
  void notProven() throws IOException {
    put(set("none", false, List.of()), "a1");
    put(
        set("none", true, List.of(new Violation(Rule.LID_STOPS_ULTRASOUND, "none", List.of(), ""))),
        "a1");
    assertEquals(HEADINGS, Files.readString(file));
  }

  @Test
  @DisplayName("a line that a killed run has left half written is cut off, and the rest stays")
  void torn() throws IOException {
    put(whole("none"), "a1");
    String before = Files.readString(file);
    String line = before.substring(HEADINGS.length()).replace("none", "counter");
    for (int written = 1; written < line.length(); written++) {
      Files.writeString(file, before + line.substring(0, written));
      assertEquals(Optional.of(whole("none")), found("none", "a1"));
      assertEquals(Optional.empty(), found("counter", "a1"));
      assertEquals(before, Files.readString(file));
    }
    for (int left = 1; left < HEADINGS.length(); left++) {
      Files.writeString(file, HEADINGS.substring(0, left));
      assertEquals(Optional.empty(), found("none", "a1"));
      assertEquals(HEADINGS, Files.readString(file));
    }
  }

  @Test
  @DisplayName("lines that have lost their carriage returns are read as well")
  void lineFeeds() throws IOException {
    put(whole("none"), "a1");
    Files.writeString(file, Files.readString(file).replace("\r\n", "\n"));
    put(whole("counter"), "a1");
    assertEquals(Optional.of(whole("none")), found("none", "a1"));
    assertEquals(Optional.of(whole("counter")), found("counter", "a1"));
  }

  @Test
  @DisplayName("a file of something else is refused with its place, and not touched")
  void foreign() throws IOException {
    assertRefused("a,b\r\n1,2\r\n", ":1: this is not a file of proven sets");
    assertRefused("milk", ":1: this is not a file of proven sets");
    assertRefused("milk\r\nbread", ":1: this is not a file of proven sets");
    assertRefused(HEADINGS.strip() + ",more", ":1: this is not a file of proven sets");
    assertRefused(HEADINGS + "none,10\r\ncoun", ":2: not a proven set (");
    assertRefused(HEADINGS + "none,10,many,3,400,7,a1\r\n", ":2: not a proven set (");
    assertRefused(HEADINGS + "none,10\r\n", ":2: not a proven set (");
  }

  private void assertRefused(String content, String complaint) throws IOException {
    Files.writeString(file, content);
    String message =
        assertThrows(IllegalArgumentException.class, () -> ProvenSets.open(file, "a1"))
            .getMessage();
    assertTrue(message.startsWith(file + complaint), message);
    assertEquals(content, Files.readString(file));
  }

  @Test
  @DisplayName("the file belongs to one run at a time, and a folder is no file")
  void inUse() {
    try (ProvenSets sets = ProvenSets.open(file, "a1")) {
      UnwritableException refused =
          assertThrows(UnwritableException.class, () -> ProvenSets.open(file, "a1"));
      assertTrue(refused.getMessage().contains("another exploration is using it"));
      sets.add(whole("none"), 0);
    }
    assertEquals(Optional.of(whole("none")), found("none", "a1"));
    assertThrows(UnwritableException.class, () -> ProvenSets.open(folder, "a1"));
  }
}
