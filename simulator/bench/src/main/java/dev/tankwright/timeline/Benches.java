package dev.tankwright.timeline;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What benches begin with. */
final class Benches {
  private static final Set<String> OURS =
      Stream.of(Benches.class, Bench.class, Within.class, Throughout.class)
          .map(Class::getName)
          .collect(Collectors.toUnmodifiableSet());
  private static final double ROOM_CELSIUS = 21;

  private Benches() {}

  /** The six-litre bench bath, empty, in a room of 21 °C. */
  static Scenario sixLitre() {
    return new Scenario(
        "",
        "",
        "A timeline written in Java",
        "A timeline written in Java",
        "bench",
        Instant.parse("2026-01-05T08:00:00Z"),
        1,
        Scenario.LONGEST_MILLIS,
        BuiltInBaths.usual(),
        new BathStart(0, ROOM_CELSIUS, ROOM_CELSIUS, 1),
        DeviceProfile.sixLitre(),
        List.of(),
        List.of(),
        Contents.UNSTATED);
  }

  /**
   * Where failed timelines are written: {@code target/timelines}, or the folder that the system
   * property {@code tankwright.timelines} names. The command that is printed names the jar of the
   * system property {@code tankwright.jar}, or {@code tankwright.jar}.
   */
  static Replays replays() {
    return new Replays(
        Path.of(System.getProperty("tankwright.timelines", "target/timelines")),
        caller(),
        System.getProperty("tankwright.jar", "tankwright.jar"));
  }

  /** Class and method that asked for what failed. */
  private static String caller() {
    return StackWalker.getInstance()
        .walk(
            frames ->
                frames
                    .filter(frame -> !OURS.contains(frame.getClassName()))
                    .findFirst()
                    .map(
                        frame -> simple(frame.getClassName()) + "." + method(frame.getMethodName()))
                    .orElse("timeline"));
  }

  private static String simple(String className) {
    return className.substring(className.lastIndexOf('.') + 1).replace('$', '.');
  }

  /** The method's own name, also from within a lambda. */
  private static String method(String name) {
    return name.replaceFirst("^lambda\\$(.+)\\$\\d+$", "$1");
  }
}
