package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * A PostgreSQL server for the tests of one class, on a free loopback port, with a directory and a
 * password of its own. It refuses to run as root, so root runs it as nobody.
 */
final class PostgresServer implements BeforeAllCallback, AfterAllCallback {
  static final String USER = "recorder";
  static final String PASSWORD = "a word of the tests";

  private static final String ACCOUNT = "nobody";
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private Path programs;
  private Path directory;
  private int port;
  private Process process;
  private int databases;

  @Override
  public void beforeAll(ExtensionContext context) throws Exception {
    programs = ServerPrograms.of(context).folder();
    directory = Files.createTempDirectory("postgres-test");
    port = MosquittoBroker.freePort();
    Path password = Files.writeString(directory.resolve("password"), PASSWORD);
    if (isRoot()) {
      var owner = directory.getFileSystem().getUserPrincipalLookupService();
      Files.setOwner(password, owner.lookupPrincipalByName(ACCOUNT));
      Files.setOwner(directory, owner.lookupPrincipalByName(ACCOUNT));
    }
    say(
        "initdb",
        "--pgdata=" + data(),
        "--username=" + USER,
        "--pwfile=" + password,
        "--auth=scram-sha-256",
        "--encoding=UTF8",
        "--no-locale",
        "--no-sync");
    start();
  }

  @Override
  public void afterAll(ExtensionContext context) throws Exception {
    if (process != null && process.isAlive()) {
      stop();
    }
    if (directory != null) {
      try (Stream<Path> files = Files.walk(directory)) {
        files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
    }
  }

  /** Starts it on its port, which stays the same, and waits until it lets its user in. */
  void start() throws IOException {
    // What the machine has taken from it outlives the server's process: no disk need be waited for.
    process =
        started(
            "postgres",
            "-D",
            data(),
            "-p",
            "" + port,
            "-k",
            directory + "",
            "-h",
            "127.0.0.1",
            "-F");
    await("PostgreSQL on port " + port)
        .atMost(PATIENCE)
        .ignoreExceptionsInstanceOf(SQLException.class)
        .until(
            () -> {
              if (!process.isAlive()) {
                fail("postgres ended: " + Files.readString(directory.resolve("log.txt")));
              }
              connect("postgres").close();
              return true;
            });
  }

  /** Stops it at once, as a crash would: nothing is put away in order. */
  void crash() throws Exception {
    say("pg_ctl", "stop", "-D", data(), "-m", "immediate");
    await().atMost(PATIENCE).until(() -> !process.isAlive());
  }

  private void stop() throws Exception {
    say("pg_ctl", "stop", "-D", data(), "-m", "fast");
    await().atMost(PATIENCE).until(() -> !process.isAlive());
  }

  /** Makes a new database; returns its JDBC URL. */
  String newDatabase() throws SQLException {
    String name = "facility" + ++databases;
    try (Connection connection = connect("postgres");
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name);
    }
    return url(name);
  }

  private Connection connect(String database) throws SQLException {
    return DriverManager.getConnection(url(database), USER, PASSWORD);
  }

  private String url(String database) {
    return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
  }

  private String data() {
    return directory.resolve("data").toString();
  }

  private void say(String program, String... args) throws Exception {
    Process process = started(program, args);
    assertEquals(
        0, process.waitFor(), () -> program + " failed: see " + directory.resolve("log.txt"));
  }

  private Process started(String program, String... args) throws IOException {
    List<String> command = new ArrayList<>();
    if (isRoot()) {
      // Debian's nobody has a group of another name, and its number is the same everywhere there.
      command.addAll(List.of("setpriv", "--reuid=" + ACCOUNT, "--regid=nogroup"));
      command.add("--clear-groups");
    }
    command.add(programs.resolve(program).toString());
    command.addAll(List.of(args));
    return new ProcessBuilder(command)
        .directory(directory.toFile())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(directory.resolve("log.txt").toFile()))
        .start();
  }

  private static boolean isRoot() {
    return System.getProperty("user.name").equals("root");
  }
}
