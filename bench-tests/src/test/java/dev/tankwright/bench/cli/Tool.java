package dev.tankwright.bench.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs the packaged command as a process of its own, as a user does. */
public final class Tool {
  private static final long LIMIT_SECONDS = 600;

  private Tool() {}

  /**
   * What a process left behind.
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
   * Runs the command in the given folder and waits for its end; a process that hangs is a failure.
   */
  public static Result run(Path folder, String... args) throws IOException, InterruptedException {
    File jar = new File(System.getProperty("tankwright.jar"));
    if (!jar.isFile()) {
      throw new IllegalStateException(jar + " is missing; run the tests by 'mvn verify'");
    }
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-jar");
    command.add(jar.toString());
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

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
