package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Extent;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * The publishing process is killed (SIGKILL) at random moments and started again each time; {@code
 * -Dtankwright.kills=200} kills more often than the build does. The seed is printed.
 */
@Timeout(3600)
@Needs(Service.MOSQUITTO)
class KilledPublisherTest {
  private static final int KILLS =
      Integer.getInteger("tankwright.kills", Extent.of(3, 20, "kills of the publisher"));
  private static final int MOST_DOTS = 60;
  private static final int LONGEST_MICROS = 3000;

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  @TempDir private Path folder;

  @Test
  void losesNothingAndDoublesNothingUnrecognised() throws Exception {
    long seed = Long.getLong("tankwright.kills.seed", System.nanoTime());
    System.out.println("kills " + KILLS + ", seed " + seed);
    Random random = new Random(seed);
    Path file = folder.resolve("outbox.db");
    try (History history = new History(broker.uri())) {
      long before = 0;
      for (int kill = 0; kill < KILLS; kill++) {
        killAt(file, random.nextInt(MOST_DOTS), random.nextInt(LONGEST_MICROS));
        long now = History.committed(file).size();
        assertTrue(now >= before, "a committed event was gone after kill " + kill);
        before = now;
      }
      try (Device last = new Device(file, broker.uri())) {
        assertEquals(KILLS + 1, last.outbox.session());
        last.happen(10);
        last.awaitDrained();
        history.assertNothingLost(file, "publisher killed " + KILLS + " times");
      }
    }
  }

  /** Kills after so many dots of progress and a moment more, so that it hits any step of it. */
  private void killAt(Path file, int dots, int micros) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                PublisherProcess.class.getName(),
                file.toString(),
                broker.uri().toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try (InputStream said = process.getInputStream()) {
      assertEquals('u', said.read());
      for (int dot = 0; dot < dots; dot++) {
        assertEquals('.', said.read(), "the process ended by itself");
      }
      process.waitFor(micros, TimeUnit.MICROSECONDS);
    } finally {
      process.destroyForcibly();
      await().atMost(Duration.ofSeconds(20)).until(() -> !process.isAlive());
    }
  }
}
