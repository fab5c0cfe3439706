package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The baths that come with the program, by the names that files and the command line use. Each is a
 * profile file beside this class, read as a user's own is.
 */
public final class BuiltInBaths {
  /** The bath of a scenario that names none. */
  public static final String USUAL = "bench-6l";

  private static final List<String> NAMES = List.of("bench-3l", USUAL, "floor-28l");
  private static final Map<String, BathProfile> BATHS = baths();

  private BuiltInBaths() {}

  private static Map<String, BathProfile> baths() {
    Map<String, BathProfile> baths = new LinkedHashMap<>();
    NAMES.forEach(name -> baths.put(name, read(name + ".yaml")));
    return baths;
  }

  private static BathProfile read(String file) {
    try (InputStream in = BuiltInBaths.class.getResourceAsStream(file)) {
      return ProfileReader.read(file, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own bath " + file + " cannot be read", e);
    } catch (ScenarioException e) {
      throw new IllegalStateException("the program's own bath " + file + " is wrong", e);
    }
  }

  /** Their names, the smallest bath first. */
  public static List<String> names() {
    return NAMES;
  }

  /** The bath of that name. */
  public static Optional<BathProfile> byName(String name) {
    return Optional.ofNullable(BATHS.get(name));
  }

  /** The bath of a scenario that names none: a bench bath of six litres. */
  public static BathProfile usual() {
    return BATHS.get(USUAL);
  }
}
