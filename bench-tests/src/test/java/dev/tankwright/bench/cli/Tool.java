package dev.tankwright.bench.cli;

import dev.tankwright.cli.Main;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Runs the command: by its entry point in this process, which takes a moment, or as the packaged
 * jar in a process of its own, as a user does. An argument that begins with {@code ./} is a file
 * below the given folder, both ways.
 */
public final class Tool {
  private static final long LIMIT_SECONDS = 600;
  private static final String HERE = "./";

  static {
    // A command has SQLite's library unpacked into a folder that it removes at its end; this
    // process
    // goes on, and needs the library later.
    try {
      DriverManager.getConnection("jdbc:sqlite::memory:").close();
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private Tool() {}

  /**
   * What a command left behind.
   *
   * @param code its exit code
   * @param out what it printed
   * @param err what it complained
   */
  public record Result(int code, String out, String err) {
    public List<String> errLines() {
      return err.lines().toList();
    }
  }

  /** The repository's root. */
  public static Path root() {
    return Path.of(System.getProperty("tankwright.root"));
  }

  /** Folder of the project's scenarios. */
  static Path library() {
    return root().resolve("bench-tests/scenarios");
  }

  /** The scenarios of the project, in the order of their paths. */
  static List<Path> scenarios() throws IOException {
    try (var files = Files.walk(library())) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /**
   * Runs the command in this process. What it prints has no more of the folder's own name than if
   * it had been run there.
   */
  public static Result run(Path folder, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String place = folder + File.separator;
    String[] placed =
        Arrays.stream(args)
            .map(arg -> arg.startsWith(HERE) ? place + arg.substring(HERE.length()) : arg)
            .toArray(String[]::new);
    int code = Main.execute(new PrintWriter(out), new PrintWriter(err), placed);
    return new Result(
        code, out.toString().replace(place, HERE), err.toString().replace(place, HERE));
  }

  /**
   * Runs the packaged jar in the given folder and waits for its end; a process that hangs is a
   * failure.
   */
  public static Result runJar(Path folder, String... args)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(jar());
    command.addAll(List.of(args));
    Path out = Files.createTempFile("tool", ".out");
    Path err = Files.createTempFile("tool", ".err");
    try {
      Process process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      if (!process.waitFor(LIMIT_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException(String.join(" ", command) + " did not end");
      }
      return new Result(process.exitValue(), text(out), text(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  /** What starts the packaged jar. */
  public static List<String> jar() {
    String jar = System.getProperty("tankwright.jar");
    if (!new File(jar).isFile()) {
      throw new IllegalStateException(jar + " is missing; run the tests by 'mvn verify'");
    }
    return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", jar);
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
