package dev.tankwright.controller.board;

/**
 * Fixed-size ring in which the controller leaves facts and from which its host drains them. A full
 * ring drops the newest facts, counts them, and says so in a {@link NoticeKind#NOTICES_LOST} notice
 * at the end of the next draining: never silence. No allocation after construction. One thread.
 */
public final class NoticeRing {
  /** Takes one notice out of the ring. */
  @FunctionalInterface
  public interface Taker {
    /**
     * Called once per notice, oldest first.
     *
     * @param kind what it tells
     * @param first first argument, see {@link NoticeKind}
     * @param second second argument, see {@link NoticeKind}
     * @param uptimeMs when it was written, ms of controller uptime
     */
    void take(NoticeKind kind, int first, int second, long uptimeMs);
  }

  private final NoticeKind[] kinds;
  private final int[] firsts;
  private final int[] seconds;
  private final long[] uptimes;
  private int head;
  private int size;
  private int lost;
  private long lastLostUptimeMs;

  /**
   * Makes an empty ring.
   *
   * @param capacity how many notices it holds, at least 1
   */
  public NoticeRing(int capacity) {
    if (capacity < 1) {
      throw new IllegalArgumentException(
          "a notice ring holds at least one notice, not " + capacity);
    }
    kinds = new NoticeKind[capacity];
    firsts = new int[capacity];
    seconds = new int[capacity];
    uptimes = new long[capacity];
  }

  /** Writes a notice, or counts it as lost when the ring is full. */
  public void put(NoticeKind kind, int first, int second, long uptimeMs) {
    if (size == kinds.length) {
      lost = Math.min(lost, Integer.MAX_VALUE - 1) + 1;
      lastLostUptimeMs = uptimeMs;
      return;
    }
    write(kind, first, second, uptimeMs);
  }

  /** Hands every notice to the taker, oldest first, and the loss last; leaves the ring empty. */
  public void drain(Taker taker) {
    while (size > 0) {
      int at = head;
      head = next(head, 1);
      size--;
      taker.take(kinds[at], firsts[at], seconds[at], uptimes[at]);
    }
    if (lost > 0) {
      taker.take(NoticeKind.NOTICES_LOST, lost, 0, lastLostUptimeMs);
      lost = 0;
    }
  }

  /** True when there is nothing to drain; a loss is always accompanied by a full ring. */
  public boolean isEmpty() {
    return size == 0;
  }

  private void write(NoticeKind kind, int first, int second, long uptimeMs) {
    int at = next(head, size);
    kinds[at] = kind;
    firsts[at] = first;
    seconds[at] = second;
    uptimes[at] = uptimeMs;
    size++;
  }

  private int next(int from, int by) {
    int at = from + by;
    return at >= kinds.length ? at - kinds.length : at;
  }
}
