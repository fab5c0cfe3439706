package dev.tankwright.explore;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Which choices of the world can follow a scan. All rows are worked out beforehand and handed out
 * as they are: nobody writes to them.
 */
final class Following {
  private static final int MOMENTS = 4;
  private static final int PRESSED = 1;
  private static final int LATCHED = 2;

  private final List<Choice> all;
  private final Detail detail;
  private final boolean keysFollow;
  private final int[][] rows;

  /**
   * Works out the rows.
   *
   * @param all every choice
   * @param cuts how many losses of power there are, numbered behind the last choice
   * @param detail how finely the world is divided
   * @param temperatures how many classes of temperature the bath has
   * @param keysFollow whether a key can follow another one at once
   */
  Following(List<Choice> all, int cuts, Detail detail, int temperatures, boolean keysFollow) {
    this.all = all;
    this.detail = detail;
    this.keysFollow = keysFollow;
    rows = new int[temperatures * MOMENTS][];
    for (int row = 0; row < rows.length; row++) {
      int temperature = row / MOMENTS;
      boolean pressed = (row & PRESSED) != 0;
      boolean latched = (row & LATCHED) != 0;
      rows[row] =
          IntStream.range(0, all.size() + cuts)
              .filter(i -> i >= all.size() || canFollow(i, temperature, pressed, latched))
              .toArray();
    }
  }

  private boolean canFollow(int index, int temperature, boolean pressed, boolean latched) {
    Choice choice = all.get(index);
    boolean near = !detail.isGradual() || Math.abs(choice.temperature() - temperature) <= 1;
    boolean let = keysFollow || !pressed || !choice.key().fresh();
    boolean steps = !latched || !detail.isSparse() || choice.step() == Step.USUAL;
    return near && let && steps;
  }

  /** As {@link Choices#after}. */
  int[] after(int temperature, boolean pressed, boolean latched) {
    int moment = (pressed ? PRESSED : 0) | (latched ? LATCHED : 0);
    return rows[temperature * MOMENTS + moment];
  }
}
