package dev.tankwright.scenario;

import dev.tankwright.plant.BathProfile;
import java.math.BigDecimal;

/** Baths as profile files write them. */
public final class ProfileText {
  private static final int MOST_ROUNDS = 8;

  private ProfileText() {}

  /**
   * The bath that is read from a file with this bath's values. Files hold times and bores where the
   * plant counts with rates and sections, so its last bits may differ; made from a bath that has
   * once been made so, it is the same bath.
   */
  public static BathProfile asRead(BathProfile bath) {
    BathProfile before = bath;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      ProfileBuilder builder = new ProfileBuilder();
      builder.putAll(before);
      BathProfile after = builder.build(bath.name());
      if (after.equals(before)) {
        return after;
      }
      before = after;
    }
    throw new IllegalStateException("the values of " + bath.name() + " do not come to rest");
  }

  /** A profile file with every value, from which {@link #asRead} of the bath is read. */
  public static String of(BathProfile bath) {
    StringBuilder text = new StringBuilder(2000);
    text.append("profile: '").append(bath.name().replace("'", "''")).append("'\n");
    for (ProfileKey key : ProfileKey.values()) {
      BigDecimal value = BigDecimal.valueOf(key.of(bath));
      text.append(key.key()).append(": ").append(Amount.withUnit(value, key.dimension()));
      text.append('\n');
    }
    return text.toString();
  }
}
