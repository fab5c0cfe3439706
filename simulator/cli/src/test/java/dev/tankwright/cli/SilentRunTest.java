package dev.tankwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A process that uses the embedded broker writes no file, logs nothing, and ends. */
@Timeout(120)
class SilentRunTest {
  @Test
  void leavesNothingBehind(@TempDir Path dir) throws IOException, InterruptedException {
    File work = Files.createDirectory(dir.resolve("work")).toFile();
    File temp = Files.createDirectory(dir.resolve("temp")).toFile();
    File output = dir.resolve("output.txt").toFile();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + temp,
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty("java.class.path"),
                SilentRun.class.getName())
            .directory(work)
            .redirectErrorStream(true)
            .redirectOutput(output)
            .start();
    try {
      assertTrue(process.waitFor(90, TimeUnit.SECONDS), "the process did not end by itself");
    } finally {
      process.destroyForcibly();
    }
    assertEquals("200 arrived", Files.readString(output.toPath(), UTF_8));
    assertEquals(0, process.exitValue());
    assertArrayEquals(new String[0], work.list());
    assertArrayEquals(new String[0], temp.list());
  }
}
