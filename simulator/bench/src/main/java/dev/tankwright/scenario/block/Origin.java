package dev.tankwright.scenario.block;

import java.util.Locale;

/** Where a name comes from. */
public enum Origin {
  /** The trade, or one of its neighbours, says so. */
  TRADE,
  /** An open standard says so. */
  STANDARD,
  /** It was chosen here. */
  OURS;

  /** The word that the vocabulary uses. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
