package dev.tankwright.extent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/** What runs and what is left out, by what is asked for and by what the machine has. */
class ExtentTest {
  private static final List<String> OURS =
      List.of("tankwright.evidence", "tankwright.trace", "tankwright.left-out");

  @TempDir private Path folder;

  private final Map<String, String> outer = new HashMap<>();

  /** The samples run as in the ordinary build, whatever this build is. */
  @BeforeEach
  void clear() {
    OURS.forEach(key -> outer.put(key, System.clearProperty(key)));
  }

  @AfterEach
  void restore() {
    outer.forEach(
        (key, value) -> {
          if (value == null) {
            System.clearProperty(key);
          } else {
            System.setProperty(key, value);
          }
        });
  }

  @Test
  @DisplayName("long evidence is left out of the ordinary build, and every test of it is named")
  void ordinary() throws IOException {
    Seen seen = run(LongClass.class, Mixed.class);

    assertEquals(List.of("short()"), seen.passed);
    String mixed = Mixed.class.getName();
    String whole = LongClass.class.getName();
    assertEquals(
        List.of(
            new LeftOut(LeftOut.Why.EVIDENCE, "a sample", whole + "#one"),
            new LeftOut(LeftOut.Why.EVIDENCE, "a sample", whole + "#many"),
            new LeftOut(LeftOut.Why.EVIDENCE, "a sample", mixed + "#lengthy")),
        seen.leftOut().stream().sorted((a, b) -> order(a) - order(b)).toList());
    Path file = folder.resolve("deep/1.csv");
    LeftOut.write(file, "now", seen.leftOut());
    assertEquals(seen.leftOut(), LeftOut.read(file, "now"));
    assertEquals(List.of(), LeftOut.read(file, "another build"));
  }

  private static int order(LeftOut one) {
    return List.of("one", "many", "lengthy").indexOf(one.test().replaceAll(".*#", ""));
  }

  @Test
  @DisplayName("all of it runs where it is asked for")
  void whole() {
    System.setProperty("tankwright.evidence", "true");

    Seen seen = run(LongClass.class, Mixed.class);

    assertEquals(5, seen.passed.size(), seen.passed::toString);
    assertEquals(List.of(), seen.leftOut());
  }

  @Test
  @DisplayName("a test that needs what is not here is left out, or fails where all is demanded")
  void missing() {
    Service absent = Service.MOSQUITTO;
    LeftOut.Why why = LeftOut.Why.SERVICE;
    String reason = LeftOut.reason(why, absent.howToGet());

    assertEquals(
        List.of(new LeftOut(why, absent.howToGet(), "a.B#c")),
        LeftOut.of(reason, "a.B#c").stream().toList());
    assertTrue(LeftOut.of("disabled by hand", "a.B#c").isEmpty());
    for (Service service : Service.values()) {
      boolean present = service.isPresent();
      assertEquals(present ? 1 : 0, run(sample(service)).passed.size(), service.howToGet());
    }
    System.setProperty("tankwright.trace", "complete");
    for (Service service : Service.values()) {
      Seen seen = run(sample(service));
      boolean present = service.isPresent();
      assertEquals(present ? List.of() : List.of(service.howToGet()), seen.faults);
      assertEquals(List.of(), seen.leftOut());
    }
  }

  private static Class<?> sample(Service service) {
    return switch (service) {
      case MOSQUITTO -> NeedsMosquitto.class;
      case POSTGRESQL -> NeedsPostgres.class;
      case CHROMIUM -> NeedsChromium.class;
      case OPENSSL -> NeedsOpenssl.class;
    };
  }

  @Test
  @DisplayName("of many cases a few that lie apart run, and the number is noted")
  void fewer() {
    List<Integer> all = IntStream.range(0, 100).boxed().toList();

    assertEquals(List.of(0, 25, 50, 75), Extent.some(all, 4, "samples of this test"));
    assertTrue(Extent.fewer().contains("4 of 100 samples of this test"));
    Extent.forget("samples of this test");
    assertTrue(Extent.fewer().stream().noneMatch(text -> text.contains("of this test")));
    System.setProperty("tankwright.evidence", "true");
    assertEquals(all, Extent.some(all, 4, "samples that are not noted"));
    assertEquals(7, Extent.of(3, 7, "samples that are not noted"));
    assertTrue(Extent.fewer().stream().noneMatch(text -> text.contains("not noted")));
    assertThrows(IllegalArgumentException.class, () -> Extent.of(7, 7, "samples"));
  }

  /** What came of the samples. */
  private static final class Seen implements TestExecutionListener {
    final List<String> passed = new ArrayList<>();
    final List<String> faults = new ArrayList<>();
    final LeftOutListener listener = new LeftOutListener();

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
      result.getThrowable().ifPresent(thrown -> faults.add(causeOf(thrown)));
      if (test.isTest() && result.getStatus() == TestExecutionResult.Status.SUCCESSFUL) {
        passed.add(test.getDisplayName());
      }
    }

    private static String causeOf(Throwable thrown) {
      Throwable cause = thrown.getCause() == null ? thrown : thrown.getCause();
      return cause.getMessage();
    }

    List<LeftOut> leftOut() {
      return listener.leftOut().stream().filter(one -> one.why() != LeftOut.Why.CASES).toList();
    }
  }

  private static Seen run(Class<?>... tests) {
    Seen seen = new Seen();
    LauncherDiscoveryRequestBuilder request = LauncherDiscoveryRequestBuilder.request();
    for (Class<?> one : tests) {
      request.selectors(DiscoverySelectors.selectClass(one));
    }
    LauncherDiscoveryRequest built = request.build();
    LauncherConfig alone =
        LauncherConfig.builder().enableTestExecutionListenerAutoRegistration(false).build();
    LauncherFactory.create(alone).execute(built, seen.listener, seen);
    return seen;
  }

  @Evidence("a sample")
  static class LongClass {
    @Test
    void one() {}

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void many(int number) {}
  }

  static class Mixed {
    @Test
    @DisplayName("short()")
    void quick() {}

    @Test
    @Evidence("a sample")
    void lengthy() {}
  }

  @Needs(Service.MOSQUITTO)
  static class NeedsMosquitto {
    @Test
    void one() {}
  }

  @Needs(Service.POSTGRESQL)
  static class NeedsPostgres {
    @Test
    void one() {}
  }

  @Needs(Service.CHROMIUM)
  static class NeedsChromium {
    @Test
    void one() {}
  }

  @Needs(Service.OPENSSL)
  static class NeedsOpenssl {
    @Test
    void one() {}
  }
}
