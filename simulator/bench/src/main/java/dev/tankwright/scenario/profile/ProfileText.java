package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.quantity.Amount;
import java.math.BigDecimal;
import java.math.MathContext;

/** Baths as profile files write them. */
public final class ProfileText {
  /** Less than a file may give, so that what a bath counts with falls to the same digits again. */
  private static final MathContext DIGITS = new MathContext(12);

  private ProfileText() {}

  /**
   * The bath that is read from a file with this bath's values. Files hold times and bores where the
   * plant counts with rates and sections, and so many digits, so its last bits may differ; made
   * from a bath that was made so, it is the same bath.
   */
  public static BathProfile asRead(BathProfile bath) {
    ProfileBuilder builder = new ProfileBuilder();
    for (ProfileKey key : ProfileKey.values()) {
      builder.put(key, value(key, bath).doubleValue());
    }
    return builder.build(bath.name());
  }

  /** A profile file with every value, from which {@link #asRead} of the bath is read. */
  public static String of(BathProfile bath) {
    StringBuilder text = new StringBuilder(2000);
    text.append("profile: '").append(bath.name().replace("'", "''")).append("'\n");
    for (ProfileKey key : ProfileKey.values()) {
      text.append(key.key()).append(": ");
      text.append(Amount.withUnit(value(key, bath), key.type().dimension())).append('\n');
    }
    return text.toString();
  }

  private static BigDecimal value(ProfileKey key, BathProfile bath) {
    return BigDecimal.valueOf(key.of(bath)).round(DIGITS);
  }
}
