package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.fail;

import dev.tankwright.extent.Service;
import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * A mosquitto process for one test, on a free loopback port, with a configuration and a directory
 * of its own. The test says that it {@link dev.tankwright.extent.Needs} it.
 */
class MosquittoBroker implements BeforeEachCallback, AfterEachCallback {
  private static final String PROGRAM = "mosquitto";
  static final String PER_LISTENER = "per_listener_settings true";

  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final String permissions;
  private final List<String> more;
  private Path directory;
  private int port;
  private Process process;

  /** A broker that lets anyone do anything. */
  MosquittoBroker() {
    this("topic readwrite #");
  }

  /**
   * A broker with a list of permissions.
   *
   * @param permissions lines of its access control file
   */
  MosquittoBroker(String permissions) {
    this(permissions, List.of());
  }

  /**
   * A broker with more settings; in them {@code DIR} stands for its directory. Clients without a
   * name may come in unless it is said otherwise.
   */
  MosquittoBroker(String permissions, List<String> more) {
    this.permissions = permissions;
    this.more = more;
  }

  /**
   * A broker that keeps what it has acknowledged over a crash, and drops nothing for a slow reader.
   */
  static MosquittoBroker lasting() {
    return lasting("topic readwrite #");
  }

  /** The same with a list of permissions. */
  static MosquittoBroker lasting(String permissions) {
    return new MosquittoBroker(
        permissions,
        List.of(
            "persistence true",
            "persistence_location DIR/",
            "autosave_on_changes true",
            "autosave_interval 1"));
  }

  @Override
  public void beforeEach(ExtensionContext context) throws IOException {
    directory = Files.createTempDirectory("mosquitto-test");
    port = freePort();
    prepare(directory);
    start();
  }

  @Override
  public void afterEach(ExtensionContext context) throws IOException {
    if (process != null) {
      kill();
    }
    if (directory != null) {
      try (Stream<Path> files = Files.list(directory)) {
        files.map(Path::toFile).forEach(File::delete);
      }
      Files.delete(directory);
    }
  }

  /** Puts what its settings name into its directory, before it starts. */
  void prepare(Path place) throws IOException {}

  /** Settings besides the usual ones. */
  List<String> more() {
    return more;
  }

  Path directory() {
    return directory;
  }

  int port() {
    return port;
  }

  URI uri() {
    return URI.create("tcp://127.0.0.1:" + port);
  }

  /** Starts it on its port, which stays the same, and waits until it listens. */
  void start() throws IOException {
    Path access = Files.writeString(directory.resolve("access.txt"), permissions + "\n");
    List<String> lines = new ArrayList<>();
    boolean perListener = more().contains(PER_LISTENER);
    if (perListener) {
      lines.add(PER_LISTENER); // before anything that it governs
    }
    lines.add("listener " + port + " 127.0.0.1");
    lines.add("acl_file " + access);
    if (perListener || !more().contains("allow_anonymous false")) {
      lines.add("allow_anonymous true");
    }
    lines.add("max_queued_messages 0");
    lines.add("user " + System.getProperty("user.name"));
    more().stream()
        .filter(line -> !line.equals(PER_LISTENER))
        .forEach(line -> lines.add(line.replace("DIR", directory.toString())));
    Path settings = Files.write(directory.resolve("mosquitto.conf"), lines);
    process =
        new ProcessBuilder(
                Service.program(PROGRAM).orElseThrow().toString(), "-c", settings.toString())
            .redirectErrorStream(true)
            .redirectOutput(directory.resolve("log.txt").toFile())
            .start();
    await("mosquitto on port " + port).atMost(PATIENCE).until(this::listens);
  }

  /** Kills it as a power cut would, and waits until it is gone. */
  void kill() {
    process.destroyForcibly();
    await("end of mosquitto").atMost(PATIENCE).until(() -> !process.isAlive());
  }

  /** Read from its log: a connection only to try the port can disturb the next one. */
  private boolean listens() throws IOException {
    String log = Files.readString(directory.resolve("log.txt"));
    if (!process.isAlive()) {
      fail("mosquitto ended: " + log);
    }
    return log.contains(" running");
  }

  static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }
}
