package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.delivery.EmbeddedBroker;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a run could not send is kept in its outbox and sent later, by the packaged command. */
@Timeout(300)
class DeliverCommandTest {
  private static final String SCENARIO =
      Tool.root().resolve("bench-tests/scenarios/first-cycle.yaml").toString();

  @TempDir private Path folder;

  private static String nowhere() throws IOException {
    try (ServerSocket gone = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return "tcp://127.0.0.1:" + gone.getLocalPort();
    }
  }

  @Test
  @DisplayName("what a broker that is away never got is kept and delivered later")
  void keepsWhatABrokerThatIsAwayNeverGotAndDeliversItLater() throws Exception {
    Tool.Result run =
        Tool.run(folder, "run", SCENARIO, "--quiet", "--broker", nowhere(), "--outbox", "./e.db");
    assertEquals(3, run.code(), run.err());
    assertTrue(run.err().contains("connection refused"), run.err());
    try (EmbeddedBroker broker = EmbeddedBroker.start()) {
      String uri = broker.uri().toString();
      String other = Tool.library().resolve("normal-use/small-bath.yaml").toString();
      Tool.Result again =
          Tool.run(folder, "run", other, "--quiet", "--broker", uri, "--outbox", "./e.db");
      assertEquals(2, again.code(), "another device cannot go on in this outbox");
      assertTrue(again.err().contains("name another file"), again.err());
      Tool.Result first = Tool.runJar(folder, "deliver", "--outbox", "./e.db", "--broker", uri);
      assertEquals(0, first.code(), first.err());
      assertTrue(
          first.out().matches("(\\d+) of \\1 pending events were acknowledged\\.\\R"), first.out());
      Tool.Result second = Tool.run(folder, "deliver", "--outbox", "./e.db", "--broker", uri);
      assertEquals(0, second.code(), second.err());
      assertTrue(second.out().startsWith("./e.db has no pending events"), second.out());
    }
  }

  @Test
  @DisplayName("plain text needs a word of consent, and no password is shown")
  void wantsAWordForPlainTextAndShowsNoPassword() throws Exception {
    Files.writeString(folder.resolve("word"), "open sesame\n");
    Tool.Result run =
        Tool.run(
            folder,
            "run",
            SCENARIO,
            "--broker",
            "mqtt://broker.example",
            "--user",
            "bath-1",
            "--password-file",
            "./word");
    assertEquals(2, run.code());
    assertFalse(run.err().contains("sesame"), run.err());
    run = Tool.run(folder, "run", SCENARIO, "--broker", "mqtt://broker.example");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("--plain-text"), run.err());
  }
}
