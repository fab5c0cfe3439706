package dev.tankwright.events.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The publisher over real sockets whose other end is no use. */
@Timeout(60)
class UnhelpfulBrokersTest {
  private static final Timing TIMING = new Timing(System::nanoTime, new Random(1));
  private static final Duration PATIENCE = Duration.ofMillis(300);

  private static PublishReport publishTwo(int port, String clientId) {
    return publishTwo(port, clientId, PATIENCE);
  }

  private static PublishReport publishTwo(int port, String clientId, Duration patience) {
    PublisherConfig config =
        PublisherConfig.forDevice(BrokerAccess.of(new BrokerUri("127.0.0.1", port)), "bath-1", 1)
            .withPassingClient(clientId)
            .withTimeouts(patience, patience);
    MemoryQueue queue = new MemoryQueue();
    EventPublisher publisher = MqttEventPublisher.start(config, TIMING, queue);
    queue.add(new OutgoingEvent("e1", "{}".getBytes(UTF_8)));
    queue.add(new OutgoingEvent("e2", "{}".getBytes(UTF_8)));
    return publisher.close(Duration.ofSeconds(2));
  }

  private static void assertNoThreadLeft(String clientId) {
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertEquals("", stacksOfThreadsNamed(clientId)));
  }

  private static String stacksOfThreadsNamed(String part) {
    StringBuilder stacks = new StringBuilder();
    Thread.getAllStackTraces()
        .forEach(
            (thread, stack) -> {
              if (thread.getName().contains(part)) {
                stacks.append(thread).append(Arrays.toString(stack)).append('\n');
              }
            });
    return stacks.toString();
  }

  private static void assertUndelivered(PublishReport report, String words) {
    assertEquals(0, report.acknowledged());
    assertEquals(List.of("e1", "e2"), report.undelivered());
    assertTrue(report.lastError().contains(words), report.lastError());
  }

  @Test
  void refused() throws IOException {
    int port;
    try (ServerSocket gone = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = gone.getLocalPort();
    }
    assertUndelivered(publishTwo(port, "refused"), "tcp://127.0.0.1:" + port + " (connection ref");
    assertNoThreadLeft("refused");
  }

  @Test
  void acceptedButNeverAnswered() throws IOException {
    List<Socket> accepted = new ArrayList<>();
    try (ServerSocket silent = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
      Thread acceptor =
          new Thread(
              () -> {
                try {
                  while (true) {
                    accepted.add(silent.accept());
                  }
                } catch (IOException e) {
                  // the test is over
                }
              });
      acceptor.setDaemon(true);
      acceptor.start();
      assertUndelivered(publishTwo(silent.getLocalPort(), "silent"), "does not answer");
    }
    assertNoThreadLeft("silent");
    for (Socket socket : accepted) {
      socket.close();
    }
  }

  @Test
  void blackHole() throws IOException {
    // with its backlog full, Linux leaves further connections unanswered
    try (ServerSocket full = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      List<Socket> fillers = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Socket filler = new Socket();
        fillers.add(filler);
        try {
          filler.connect(full.getLocalSocketAddress(), 100);
        } catch (IOException e) {
          break; // no answer any more, as wanted
        }
      }
      assertUndelivered(publishTwo(full.getLocalPort(), "hole"), "does not answer");
      for (Socket filler : fillers) {
        filler.close();
      }
    }
    assertNoThreadLeft("hole");
  }

  @Test
  void closesEachConnectionAtOnce() throws IOException {
    try (ServerSocket rude = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
      Thread acceptor =
          new Thread(
              () -> {
                try {
                  while (true) {
                    rude.accept().close();
                  }
                } catch (IOException e) {
                  // the test is over
                }
              });
      acceptor.setDaemon(true);
      acceptor.start();
      assertUndelivered(
          publishTwo(rude.getLocalPort(), "rude", Duration.ofSeconds(10)), "see the broker's log");
    }
    assertNoThreadLeft("rude");
  }
}
