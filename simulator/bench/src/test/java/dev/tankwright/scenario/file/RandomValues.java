package dev.tankwright.scenario.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;

/** Values of all sorts from one seed. */
final class RandomValues {
  private static final String LETTERS = "abcdefghijKLMNOPQ0123456789";
  private static final String SIGNS = "'\":#-{}[],&*!%@`|>?=~<°éΩ.;";
  private static final int LONGEST = 40;

  private final Random random;

  RandomValues(long seed) {
    random = new Random(seed);
  }

  boolean chance(int oneIn) {
    return random.nextInt(oneIn) == 0;
  }

  int whole(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  /** As likely small as large. */
  long millis(long least, long most) {
    long top = Math.min(most, least + (1L << random.nextInt(40)));
    return least + (long) (random.nextDouble() * (top - least));
  }

  /** With all its bits, or with three decimals. */
  double number(double least, double most) {
    double raw = least + random.nextDouble() * (most - least);
    double round = BigDecimal.valueOf(raw).setScale(3, RoundingMode.HALF_EVEN).doubleValue();
    return random.nextBoolean() && round >= least && round <= most ? round : raw;
  }

  <T> T one(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  <T> T one(T[] choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** One line with signs that mean something to YAML, words one space apart. */
  String line() {
    StringBuilder line = new StringBuilder();
    int length = whole(1, LONGEST);
    for (int i = 0; i < length; i++) {
      String from = chance(3) ? SIGNS : LETTERS;
      boolean inside = i > 0 && i < length - 1 && line.charAt(i - 1) != ' ';
      line.append(inside && chance(6) ? ' ' : from.charAt(random.nextInt(from.length())));
    }
    return line.toString();
  }
}
