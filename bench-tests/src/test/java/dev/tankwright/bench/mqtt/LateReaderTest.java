package dev.tankwright.bench.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A reader with a lasting session that was away for as many events as a device has in a day. */
@Timeout(180)
@Needs(Service.MOSQUITTO)
class LateReaderTest {
  private static final int EVENTS = 5000;

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  @TempDir private Path folder;

  @Test
  void aReaderThatIsBehindByADayGetsAll() throws Exception {
    Path file = folder.resolve("outbox.db");
    try (History history = new History(broker.uri());
        Device device = new Device(file, broker.uri())) {
      history.leave();
      device.happen(EVENTS);
      device.awaitDrained();
      assertEquals(0, history.arrivals());
      history.comeBack();
      History.Counts counts = history.assertNothingLost(file, "reader behind by a day");
      assertEquals(EVENTS, counts.committed());
    }
  }
}
