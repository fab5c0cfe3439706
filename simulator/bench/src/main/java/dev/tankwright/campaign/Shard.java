package dev.tankwright.campaign;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One machine's share of a campaign: every {@code count}-th case, so that all shares hold some of
 * every cell.
 *
 * @param index which share, 1 to {@code count}
 * @param count how many shares there are, 1 to 100000
 */
public record Shard(int index, int count) {
  /** All of it. */
  public static final Shard WHOLE = new Shard(1, 1);

  private static final int MOST = 100_000;
  private static final Pattern TEXT = Pattern.compile("([0-9]{1,6})/([0-9]{1,6})");

  /** Checks the numbers. */
  public Shard {
    if (count < 1 || count > MOST || index < 1 || index > count) {
      throw new IllegalArgumentException(index + "/" + count + " is not a shard");
    }
  }

  /** The share that a text like {@code 3/16} names; empty when it names none. */
  public static Optional<Shard> parse(String text) {
    Matcher matcher = TEXT.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int index = Integer.parseInt(matcher.group(1));
    int count = Integer.parseInt(matcher.group(2));
    return index >= 1 && index <= count && count <= MOST
        ? Optional.of(new Shard(index, count))
        : Optional.empty();
  }

  /** Whether a case belongs to it. */
  public boolean has(int number) {
    return number % count == index - 1;
  }

  /** How many of so many cases belong to it. */
  public int sizeOf(int cases) {
    return (cases - index + count) / count;
  }

  /** For example {@code 3/16}. */
  @Override
  public String toString() {
    return index + "/" + count;
  }
}
