package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code profile} from outside. */
class ProfileCommandTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("what follows from a profile is printed, and its page fetches nothing")
  void shouldPrintWhatFollowsAndLeaveAPageThatFetchesNothing() throws Exception {
    Tool.Result result = Tool.run(folder, "profile", "bench-6l", "--out", "./look");

    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Heater per litre"), result.out());
    String page = Files.readString(folder.resolve("look/profile.html"));
    assertTrue(page.contains("default-src 'none'"), "the page has a policy");
    assertTrue(page.contains("No hands in a running bath"), "the page has its cautions");
    assertFalse(page.contains("src=\"http"), "the page fetches nothing");
  }

  @Test
  @DisplayName("a bath that cannot be is refused with its place and its range")
  void shouldRefuseABathThatCannotBe() throws Exception {
    Files.writeString(
        folder.resolve("b.yaml"), "profile: B\nextends: bench-3l\nheater-power: 100 kW\n");

    Tool.Result result = Tool.runJar(folder, "profile", "b.yaml");

    assertEquals(2, result.code());
    assertEquals(
        "b.yaml:3:15: heater-power is 100 kW; it must lie from 10 W to 10000 W",
        result.err().strip());
  }

  @Test
  @DisplayName("an unknown bath is refused with those that are known")
  void shouldNameTheBathsItKnows() throws Exception {
    Tool.Result result = Tool.run(folder, "profile", "bench-9l");

    assertEquals(2, result.code());
    assertTrue(result.err().contains("bench-3l, bench-6l, floor-28l"), result.err());
  }
}
