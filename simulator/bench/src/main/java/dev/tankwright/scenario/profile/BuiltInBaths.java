package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The baths that come with the program, by the names that files and the command line use. */
public final class BuiltInBaths {
  /** The bath of a scenario that names none. */
  public static final String USUAL = "bench-6l";

  private static final Map<String, BathProfile> BATHS = baths();

  private BuiltInBaths() {}

  private static Map<String, BathProfile> baths() {
    Map<String, BathProfile> baths = new LinkedHashMap<>();
    baths.put("bench-3l", BathProfile.threeLitre());
    baths.put(USUAL, BathProfile.sixLitre());
    baths.put("floor-28l", BathProfile.twentyEightLitre());
    return baths;
  }

  /** Their names, the smallest bath first. */
  public static List<String> names() {
    return List.copyOf(BATHS.keySet());
  }

  /** The bath of that name. */
  public static Optional<BathProfile> byName(String name) {
    return Optional.ofNullable(BATHS.get(name));
  }
}
