package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.Credentials;
import dev.tankwright.events.mqtt.TlsIdentity;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * Brokers that want encryption, certificates or passwords, and ways in that do not hold. What could
 * not leave stays owed; with the right way in it all arrives.
 */
@Timeout(180)
@Needs({Service.MOSQUITTO, Service.OPENSSL})
class SecuredBrokerTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);

  /** One plain port for the history; four for TLS, each with another fault or none. */
  private static final class Guarded extends MosquittoBroker {
    final int tls = freePort();
    final int expired = freePort();
    final int elsewhere = freePort();
    final int withPassword = freePort();

    Guarded() throws IOException {
      super("topic readwrite #", List.of());
    }

    @Override
    List<String> more() {
      return List.of(
          PER_LISTENER,
          "listener " + tls + " 127.0.0.1",
          "cafile DIR/ca.pem",
          "certfile DIR/server.pem",
          "keyfile DIR/server.key",
          "require_certificate true",
          "allow_anonymous true",
          "listener " + expired + " 127.0.0.1",
          "certfile DIR/expired.pem",
          "keyfile DIR/expired.key",
          "allow_anonymous true",
          "listener " + elsewhere + " 127.0.0.1",
          "certfile DIR/elsewhere.pem",
          "keyfile DIR/elsewhere.key",
          "allow_anonymous true",
          "listener " + withPassword + " 127.0.0.1",
          "certfile DIR/server.pem",
          "keyfile DIR/server.key",
          "password_file DIR/passwords",
          "allow_anonymous false");
    }

    @Override
    void prepare(Path place) throws IOException {
      Certificates made = Certificates.in(place);
      made.make("server", "localhost", "DNS:localhost,IP:127.0.0.1", 5);
      made.make("expired", "localhost", "DNS:localhost,IP:127.0.0.1", -1);
      made.make("elsewhere", "broker.example", "DNS:broker.example", 5);
      made.make("client", "bath-1", "DNS:bath-1", 5);
      Path passwords = Files.writeString(place.resolve("passwords"), "bath-1:the right one\n");
      new ProcessBuilder("mosquitto_passwd", "-U", passwords.toString()).start().onExit().join();
    }
  }

  @RegisterExtension final Guarded broker;

  @TempDir private Path folder;

  private History history;

  SecuredBrokerTest() throws IOException {
    broker = new Guarded();
  }

  @AfterEach
  void close() throws Exception {
    if (history != null) {
      history.close();
    }
  }

  private BrokerAccess access(int port, String certificate, Optional<Credentials> credentials)
      throws IOException {
    Path at = broker.directory();
    TlsIdentity identity =
        TlsIdentity.ofFiles(
            at.resolve("ca.pem"),
            certificate == null ? null : at.resolve(certificate + ".pem"),
            certificate == null ? null : at.resolve(certificate + ".key"));
    BrokerUri uri = BrokerUri.of(URI.create("mqtts://127.0.0.1:" + port));
    return BrokerAccess.of(uri, credentials, identity, false);
  }

  /** Tries a way in that must fail with these words, then one that holds: nothing is lost. */
  private void failsThenArrives(String fault, BrokerAccess bad, String words) throws Exception {
    history = new History(broker.uri());
    Path file = folder.resolve("outbox.db");
    try (Device device = new Device(file, bad)) {
      device.happen(20);
      await()
          .atMost(LIMIT)
          .untilAsserted(
              () ->
                  assertTrue(
                      String.valueOf(device.publisher.lastError()).contains(words),
                      device.publisher::lastError));
      assertEquals(20, device.stop(Duration.ZERO).undelivered().size());
    }
    assertEquals(0, history.arrivals());
    try (Device device = new Device(file, access(broker.tls, "client", Optional.empty()))) {
      device.happen(20);
      device.awaitDrained();
      assertEquals(40, history.assertNothingLost(file, fault).committed());
    }
  }

  @Test
  void expiredCertificate() throws Exception {
    failsThenArrives(
        "expired certificate", access(broker.expired, null, Optional.empty()), "has expired");
  }

  @Test
  void certificateOfAnotherHost() throws Exception {
    failsThenArrives(
        "wrong host name", access(broker.elsewhere, null, Optional.empty()), "for another host");
  }

  @Test
  void noClientCertificateWhereOneIsAskedFor() throws Exception {
    failsThenArrives("no client certificate", access(broker.tls, null, Optional.empty()), "mqtts");
  }

  @Test
  void authorityThatIsNotTrusted() throws Exception {
    BrokerUri uri = BrokerUri.of(URI.create("mqtts://127.0.0.1:" + broker.tls));
    failsThenArrives("unknown authority", BrokerAccess.of(uri), "an authority that is not trusted");
  }

  @Test
  void plainPortAskedForTls() throws Exception {
    failsThenArrives("plain port", access(broker.port(), null, Optional.empty()), "TLS port");
  }

  @Test
  void wrongPassword() throws Exception {
    Credentials wrong = Credentials.of("bath-1", "a wrong one");
    failsThenArrives(
        "wrong password", access(broker.withPassword, null, Optional.of(wrong)), "not authorised");
  }

  @Test
  void rightPassword() throws Exception {
    history = new History(broker.uri());
    Path file = folder.resolve("outbox.db");
    Credentials right = Credentials.of("bath-1", "the right one");
    BrokerAccess access = access(broker.withPassword, null, Optional.of(right));
    try (Device device = new Device(file, access)) {
      device.happen(20);
      device.awaitDrained();
      assertEquals(20, history.assertNothingLost(file, "right password").committed());
    }
  }
}
