package dev.tankwright.bench.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds every correlation against values that its source, or another source, publishes. The table
 * of all of them goes to the console and to target/published-values.csv, also when a value fails.
 */
class PublishedValuesTest {
  private static final Path CSV = Path.of("target", "published-values.csv");

  static List<PublishedValue> all() {
    return Stream.of(
            SensorValues.all(),
            WaterValues.all(),
            SaturationValues.all(),
            GasValues.all(),
            AirValues.all(),
            HeatAndFlowValues.all())
        .flatMap(List::stream)
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void agreesToTheLastPrintedDigit(PublishedValue value) {
    assertTrue(
        value.agrees(),
        () -> value + ": ours is " + value.ours() + ", off by more than " + value.tolerance());
  }

  @Test
  void tableIsPrintedAndWritten() throws IOException {
    List<PublishedValue> all = all();
    System.out.println(PublishedValue.heading());
    List<String> lines = new ArrayList<>(List.of(PublishedValue.csvHeading()));
    for (PublishedValue value : all) {
      System.out.println(value.line());
      lines.add(value.csv());
    }
    Files.createDirectories(CSV.getParent());
    Files.write(CSV, lines);
    assertEquals(all.size() + 1, Files.readAllLines(CSV).size(), "one line per value and one head");
  }

  @Test
  void noPointIsCountedTwice() {
    Set<String> seen = new HashSet<>();
    for (PublishedValue value : all()) {
      assertTrue(
          seen.add(value.property() + value.point() + value.source()), () -> "twice: " + value);
    }
  }

  @Test
  void oneUnitOfTheLastDigitIsNoticed() {
    assertTrue(PublishedValue.printed("x", "y", 9.1749, "9.17", "z").agrees());
    assertTrue(PublishedValue.printed("x", "y", 0.0035365894149, "0.353658941e-2", "z").agrees());
    assertFalse(PublishedValue.printed("x", "y", 9.18, "9.17", "z").agrees());
    assertFalse(PublishedValue.printed("x", "y", 9.1751, "9.17", "z").agrees());
    assertFalse(PublishedValue.printed("x", "y", 0.00353658942, "0.353658941e-2", "z").agrees());
    assertFalse(PublishedValue.printed("x", "y", Double.NaN, "9.17", "z").agrees());
    assertFalse(PublishedValue.within("x", "y", 1.02, "1.00", 0.01, "z").agrees());
  }
}
