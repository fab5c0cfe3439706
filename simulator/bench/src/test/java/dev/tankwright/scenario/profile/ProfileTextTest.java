package dev.tankwright.scenario.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProfileTextTest {
  @ParameterizedTest
  @ValueSource(strings = {"bench-3l", "bench-6l", "floor-28l"})
  @DisplayName("a bath that was written is read back to its last bit, deviations included")
  void isReadBack(String name) throws ScenarioException {
    BathProfile bath =
        ProfileText.asRead(BuiltInBaths.byName(name).orElseThrow())
            .withHeater(BuiltInBaths.byName(name).orElseThrow().powers().heaterWatts() + 1.037)
            .with(new BathProfile.Deviations(0.9137, -0.613, 0.25, 40));
    byte[] text = ProfileText.of(bath).getBytes(StandardCharsets.UTF_8);
    assertEquals(bath, ProfileReader.read("bath.yaml", text));
  }
}
