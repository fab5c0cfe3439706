package dev.tankwright.scenario.profile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.BadFile;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.file.ScenarioReaderTest;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ProfileReaderTest {
  @TempDir private Path folder;

  private static BathProfile read(String yaml) throws ScenarioException {
    return ProfileReader.read("b.yaml", yaml.getBytes(UTF_8));
  }

  static Stream<Arguments> bad() {
    return Stream.of(
        Arguments.of("brim: -6 L", "3:7: brim is -6 L; it must lie from 0.5 L to 100 L"),
        Arguments.of(
            "heater-power: NaN",
            "3:15: heater-power is 'NaN', which is no number; write a number of at most 15 digits,"
                + " for example 300 W; it must lie from 10 W to 10000 W"),
        Arguments.of(
            "heater-power: 300",
            "3:15: heater-power is '300' without a unit; heater-power is a power, in W or kW; it"
                + " must lie from 10 W to 10000 W"),
        Arguments.of(
            "heater-power: 300 J/K",
            "3:19: heater-power is '300 J/K', a heat capacity; heater-power is a power, in W or"
                + " kW; it must lie from 10 W to 10000 W"),
        Arguments.of(
            "heater-power: 100 kW",
            "3:15: heater-power is 100 kW; it must lie from 10 W to 10000 W"),
        Arguments.of(
            "heater-power: 9 kW",
            "3:15: heater-power is 1500 W/L with 6 L to the brim; it must lie from 120 W to 1200 W,"
                + " 20 to 200 W/L"),
        Arguments.of(
            "ultrasound-power: 5 W",
            "3:19: ultrasound-power is 0.833 W/L with 6 L to the brim; it must lie from 30 W to"
                + " 600 W, 5 to 100 W/L"),
        Arguments.of("fill-mark: 7 L", "1:1: brim is 6 L; it must lie above fill-mark, 7 L"),
        Arguments.of(
            "fill-mark: 2 L", "3:12: fill-mark is 2 L; it must lie above minimum-level, 3 L"),
        Arguments.of(
            "covered-at: 3.5 L",
            "3:13: covered-at is 3.5 L; it must be at most 3 L, which is minimum-level"),
        Arguments.of(
            "tank-height: 10 cm",
            "1:1: brim is 6 L; it must be at most 4.5 L, which is surface times tank-height"),
        Arguments.of(
            "ultrasound-into-wall: 60 %",
            "3:23: ultrasound-into-wall goes with ultrasound-into-liquid to more than 100 %; it"
                + " must lie from 0 % to 50 %"),
        Arguments.of(
            "heater-powr: 300 W",
            "3:1: unknown key 'heater-powr' in the profile; did you mean 'heater-power'?"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad")
  void saysWhatIsWrongWhereAndWhatIsValid(String line, String problem) {
    String yaml = "profile: Mine\nextends: bench-6l\n" + line + "\n";
    ScenarioException e = assertThrows(ScenarioException.class, () -> read(yaml));
    assertEquals("b.yaml:" + problem, e.getMessage());
  }

  @Test
  void refusesAnUnknownBase() {
    ScenarioException e =
        assertThrows(ScenarioException.class, () -> read("profile: Mine\nextends: bench-5l\n"));
    assertEquals(
        "b.yaml:2:10: extends cannot be 'bench-5l'; did you mean 'bench-3l'?", e.getMessage());
  }

  @Test
  void wantsEveryValueThatIsNoEstimateWhereNothingIsExtended() {
    ScenarioException e =
        assertThrows(ScenarioException.class, () -> read("profile: Mine\nbrim: 6 L\n"));
    long wanted = Stream.of(ProfileKey.values()).filter(key -> !key.isEstimate()).count() - 1;
    assertEquals(wanted, e.problems().size());
    assertTrue(
        e.getMessage().contains("the profile lacks the key 'fill-mark' (0.3 L to 100 L)"),
        e.getMessage());
  }

  @Test
  void everyBuiltInBathLiesInsideEveryRange() {
    for (String name : BuiltInBaths.names()) {
      for (ProfileKey key : ProfileKey.values()) {
        double value = key.of(BuiltInBaths.byName(name).orElseThrow());
        boolean inside =
            value >= new BigDecimal(key.type().least()).doubleValue()
                && value <= new BigDecimal(key.type().most()).doubleValue();
        assertTrue(inside, name + " " + key.key() + " " + value);
      }
    }
  }

  @Test
  void aBathWrittenOutValueByValueIsTheSameBath() throws ScenarioException {
    for (String name : BuiltInBaths.names()) {
      BathProfile wanted = BuiltInBaths.byName(name).orElseThrow();
      StringBuilder yaml = new StringBuilder("profile: " + wanted.name() + "\n");
      for (ProfileKey key : ProfileKey.values()) {
        BigDecimal value = BigDecimal.valueOf(key.of(wanted));
        yaml.append(key.key())
            .append(": ")
            .append(shown(value, key.type().dimension()))
            .append('\n');
      }
      BathProfile read = read(yaml.toString());
      assertEquals(wanted.name(), read.name());
      for (ProfileKey key : ProfileKey.values()) {
        assertEquals(key.of(wanted), key.of(read), 1e-9 * key.of(wanted), key.key());
      }
      assertEquals(wanted.gas().quasiEquilibrium(), read.gas().quasiEquilibrium());
      assertEquals(
          wanted.geometry().drainSquareMetres(), read.geometry().drainSquareMetres(), 1e-12);
    }
  }

  private static String shown(BigDecimal value, Dimension dimension) {
    BigDecimal digits = value.setScale(12, RoundingMode.HALF_EVEN);
    return Amount.withUnit(digits, dimension);
  }

  @Test
  void aScenarioTakesItsBathByNameOrFromAFileBesideIt() throws Exception {
    Files.writeString(
        folder.resolve("mine.yaml"), "profile: Mine\nextends: floor-28l\nheater-power: 1.5 kW\n");
    Path file = folder.resolve("s.yaml");
    String yaml = ScenarioReaderTest.SMALL.replace("bath:", "profile: mine.yaml\nbath:");
    Files.writeString(file, yaml.replace("4500 mL", "22 L"));

    Scenario scenario = ScenarioReader.read(file);

    assertEquals("Mine", scenario.bath().name());
    assertEquals(1500, scenario.bath().powers().heaterWatts());
    assertEquals(28, scenario.bath().levels().brimLitres());
    assertEquals(22, scenario.start().litres());
    Files.writeString(file, yaml.replace("mine.yaml", "bench-3l").replace("4500 mL", "2 L"));
    assertEquals(BuiltInBaths.byName("bench-3l").orElseThrow(), ScenarioReader.read(file).bath());
  }

  @Test
  void theFillingMustFitTheBathThatIsNamed() throws IOException {
    String yaml = ScenarioReaderTest.SMALL.replace("bath:", "profile: bench-3l\nbath:");
    assertEquals(
        "6:9: fill is 4500 mL; it must lie from 0 L to 3 L", BadFile.problems(yaml).get(0));
  }

  @Test
  void aProfileThatCannotBeUsedIsToldInTheScenario() throws IOException {
    Files.writeString(folder.resolve("mine.yaml"), "profile: Mine\nextends: bench-6l\nbrim: 0 L\n");
    Path file = folder.resolve("s.yaml");
    Files.writeString(file, ScenarioReaderTest.SMALL.replace("bath:", "profile: mine.yaml\nbath:"));
    ScenarioException e = assertThrows(ScenarioException.class, () -> ScenarioReader.read(file));
    assertEquals(
        file
            + ":4:10: the profile cannot be used: "
            + folder.resolve("mine.yaml")
            + ":3:7: brim is 0 L; it must lie from 0.5 L to 100 L",
        e.getMessage());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("names")
  void aBathThatIsNotThereIsRefused(String name, String problem) {
    String yaml = ScenarioReaderTest.SMALL.replace("bath:", "profile: " + name + "\nbath:");
    assertEquals(problem, BadFile.problems(yaml).get(0));
  }

  static Stream<Arguments> names() {
    return Stream.of(
        Arguments.of(
            "bench-6L",
            "4:10: unknown profile 'bench-6L'; did you mean 'bench-6l'?; or name a file that ends"
                + " in .yaml or .yml"),
        Arguments.of(
            "/root/mine.yaml",
            "4:10: profile names the file '/root/mine.yaml' from the root; name it relative to the"
                + " scenario's folder"),
        Arguments.of(
            "no-such.yaml",
            "4:10: the profile cannot be used: no-such.yaml:1:1: there is no such file; check its"
                + " name and folder"));
  }
}
