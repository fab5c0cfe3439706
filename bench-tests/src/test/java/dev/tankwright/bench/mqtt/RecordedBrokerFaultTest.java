package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A broker is killed and started again while one records, and the device goes on publishing. */
@Timeout(180)
@Needs(Service.MOSQUITTO)
class RecordedBrokerFaultTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);

  @RegisterExtension final MosquittoBroker broker = MosquittoBroker.lasting("pattern readwrite #");

  @TempDir private Path folder;

  @Test
  void brokerKilledAndRestarted() throws Exception {
    Path kept = broker.directory().resolve("mosquitto.db");
    Path outbox = folder.resolve("outbox.db");
    Path database = folder.resolve("facility.db");
    try (RecorderProcess recorder =
            RecorderProcess.start(folder, broker.uri(), database.toString());
        RecordedRows rows = RecordedRows.of(database);
        Device device = new Device(outbox, broker.uri())) {
      recorder.awaitSaid("Listening");
      for (int round = 1; round <= 3; round++) {
        device.happen(50);
        device.awaitDrained();
        // what mosquitto has acknowledged and not yet handed on is its own to lose
        awaitRows(recorder, rows, 100L * round - 50);
        // without the subscription in its file it would come back without a reader
        await().atMost(LIMIT).until(() -> holds(kept, "tankwright/+/events"));
        broker.kill();
        recorder.awaitSaid("was lost");
        broker.start();
        // before the recorder is back, most of the times
        device.happen(50);
        device.awaitDrained();
        awaitRows(recorder, rows, 100L * round);
        int times = round;
        await().atMost(LIMIT).until(() -> returns(recorder) == times);
      }
      rows.assertHoldsAll(outbox);
      assertEquals(0, recorder.interrupt(), recorder.said());
      assertTrue(recorder.said().contains("Listening again."), recorder.said());
    }
  }

  private static long returns(RecorderProcess recorder) throws Exception {
    return recorder.said().lines().filter("Listening again."::equals).count();
  }

  private static boolean holds(Path kept, String text) throws Exception {
    return Files.exists(kept)
        && new String(Files.readAllBytes(kept), StandardCharsets.ISO_8859_1).contains(text);
  }

  private static void awaitRows(RecorderProcess recorder, RecordedRows rows, long count)
      throws Exception {
    await(recorder.said()).atMost(LIMIT).until(() -> rows.events() == count);
  }
}
