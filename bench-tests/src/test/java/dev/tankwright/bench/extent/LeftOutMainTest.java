package dev.tankwright.bench.extent;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.extent.LeftOut;
import dev.tankwright.extent.LeftOut.Why;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftOutMainTest {
  private static final String BROKER = "broker is not installed; on Debian: apt-get install it";

  @TempDir private Path root;

  @Test
  @DisplayName("each reason has one line, with the number of its tests and what would help")
  void lines() {
    assertEquals(
        List.of(
            "[left out] 2 tests of long evidence; run with -Pevidence",
            "[left out] the other cases of 1 of 3 seeds, 3 of 20 kills; run with -Pevidence",
            "[left out] 1 test, for " + BROKER),
        LeftOutMain.lines(
            List.of(
                new LeftOut(Why.SERVICE, BROKER, "a.BrokerTest#hears"),
                new LeftOut(Why.EVIDENCE, "many kills", "a.KillTest#kills"),
                new LeftOut(Why.CASES, "3 of 20 kills", ""),
                new LeftOut(Why.CASES, "1 of 3 seeds", ""),
                new LeftOut(Why.EVIDENCE, "all of it", "a.WholeTest#all"))));
    assertEquals(List.of(), LeftOutMain.lines(List.of()));
  }

  @Test
  @DisplayName("what this build left out is gathered from every module, once, and nothing older")
  void gathers() throws IOException {
    write("simulator/bench", "1", "now", "EVIDENCE,long,a.B#c");
    write("simulator/bench", "2", "now", "CASES,1 of 3 seeds,");
    write("bench-tests", "1", "now", "CASES,1 of 3 seeds,");
    write("bench-tests", "2", "yesterday", "EVIDENCE,long,a.B#old");

    assertEquals(
        List.of(
            new LeftOut(Why.CASES, "1 of 3 seeds", ""), new LeftOut(Why.EVIDENCE, "long", "a.B#c")),
        LeftOutMain.gather(root, "now"));
  }

  private void write(String module, String machine, String build, String row) throws IOException {
    Path folder = Files.createDirectories(root.resolve(module).resolve("target/left-out"));
    Files.writeString(folder.resolve(machine + ".csv"), "build," + build + "\r\n" + row + "\r\n");
  }
}
