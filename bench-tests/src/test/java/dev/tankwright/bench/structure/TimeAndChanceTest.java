package dev.tankwright.bench.structure;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Time and chance are passed in: only the command line may pass a real clock. */
class TimeAndChanceTest {
  private static final Set<String> FORBIDDEN =
      Set.of(
          "java.lang.Thread.sleep",
          "java.lang.System.nanoTime",
          "java.lang.System.currentTimeMillis",
          "java.time.Instant.now",
          "java.time.LocalDate.now",
          "java.time.LocalDateTime.now",
          "java.time.OffsetDateTime.now",
          "java.time.ZonedDateTime.now",
          "java.time.Clock.systemUTC",
          "java.time.Clock.systemDefaultZone",
          "java.lang.Math.random",
          "java.util.UUID.randomUUID",
          "java.util.concurrent.ThreadLocalRandom.current",
          "java.util.concurrent.TimeUnit.sleep");

  private static final DescribedPredicate<JavaAccess<?>> ASKS =
      DescribedPredicate.describe("ask for time or chance", TimeAndChanceTest::asks);

  @Test
  @DisplayName("no main code outside the command line asks for time or chance, or sleeps")
  void nobodyAsks() {
    JavaClasses main =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.tankwright");
    rule().check(main);
  }

  @Test
  @DisplayName("the rule sees a class that looks at the clock and one that draws without a seed")
  void ruleCanFail() {
    assertFalse(rule().evaluate(imported(ClockWatcher.class)).getFailureReport().isEmpty());
    assertFalse(rule().evaluate(imported(Gambler.class)).getFailureReport().isEmpty());
  }

  private static ArchRule rule() {
    return noClasses()
        .that()
        .resideOutsideOfPackage("dev.tankwright.cli..")
        .should()
        .accessTargetWhere(ASKS);
  }

  private static boolean asks(JavaAccess<?> access) {
    AccessTarget target = access.getTarget();
    boolean unseeded =
        target.getFullName().startsWith("java.util.Random.<init>()")
            || target.getFullName().startsWith("java.security.SecureRandom.<init>");
    return unseeded || FORBIDDEN.contains(target.getOwner().getName() + "." + target.getName());
  }

  private static JavaClasses imported(Class<?> bad) {
    return new ClassFileImporter().importClasses(bad);
  }

  /** Looks at the clock, and so breaks the rule. */
  static final class ClockWatcher {
    long look() {
      return System.nanoTime();
    }
  }

  /** Draws without a seed, and so breaks the rule. */
  static final class Gambler {
    int draw() {
      return new Random().nextInt();
    }
  }
}
