package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;

import dev.tankwright.cli.Main;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** The command 'record' as a process of its own, as a user runs it, quick to start. */
final class RecorderProcess implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final Process process;
  private final Path said;

  private RecorderProcess(Process process, Path said) {
    this.process = process;
    this.said = said;
  }

  /**
   * Starts it.
   *
   * @param folder for what it says
   */
  static RecorderProcess start(Path folder, URI broker, String database, String... more)
      throws IOException {
    // A build in the background ignores Ctrl-C, and so would what it starts.
    List<String> command = new ArrayList<>(List.of("env", "--default-signal=INT"));
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(List.of("record", "--broker", broker.toString(), "--db", database));
    command.addAll(List.of(more));
    Path said = Files.createTempFile(folder, "recorder", ".txt");
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("TANKWRIGHT_DB_PASSWORD", PostgresServer.PASSWORD);
    builder.redirectErrorStream(true).redirectOutput(said.toFile());
    return new RecorderProcess(builder.start(), said);
  }

  Process process() {
    return process;
  }

  String said() throws IOException {
    return Files.readString(said);
  }

  void awaitSaid(String words) {
    await(words)
        .atMost(PATIENCE)
        .pollInterval(Duration.ofMillis(5))
        .until(() -> !process.isAlive() || said().contains(words));
    if (!process.isAlive()) {
      throw new AssertionError("the recorder ended: " + words(said));
    }
  }

  private static String words(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }

  /** Ends it as Ctrl-C does; returns its exit code. */
  int interrupt() throws Exception {
    new ProcessBuilder("kill", "-INT", "" + process.pid()).start().waitFor();
    await().atMost(PATIENCE).until(() -> !process.isAlive());
    return process.exitValue();
  }

  /** Kills it (SIGKILL). */
  void kill() {
    process.destroyForcibly();
    await().atMost(PATIENCE).pollInterval(Duration.ofMillis(2)).until(() -> !process.isAlive());
  }

  @Override
  public void close() {
    kill();
  }
}
