package dev.tankwright.events;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Checks the events of one device as they arrive: none missing, none doubled unnoticed, none out of
 * order, none altered. Every arrival is answered with what is found by it; an event that fills a
 * gap is checked against both its neighbours.
 *
 * <p>Takes some 300 bytes for each event, to recognise it when it comes again. Not thread-safe.
 */
public final class ChainCheck {
  private record Seen(String chain, String fingerprint) {}

  private final Map<Long, Seen> seen = new HashMap<>();
  private final Map<Long, ChainedEvent> waiting = new HashMap<>();
  private final Map<ChainFinding.Kind, Long> counts = new EnumMap<>(ChainFinding.Kind.class);
  private final Gaps gaps = new Gaps();
  private String source;
  private boolean begun;
  private long start;
  private String startChain;
  private long highest;

  private ChainCheck() {}

  /** Checks the whole life of a device: the first event is number 1. */
  public static ChainCheck fromStart() {
    return after(ChainLink.START);
  }

  /** Goes on where another check ended: the next event is the one after the given. */
  public static ChainCheck after(ChainLink link) {
    ChainCheck check = new ChainCheck();
    check.begin(link.sequence(), link.chain());
    return check;
  }

  /** Checks from the first event that arrives, whatever number it has. */
  public static ChainCheck joining() {
    return new ChainCheck();
  }

  private void begin(long sequence, String chain) {
    begun = true;
    start = sequence;
    startChain = chain;
    highest = sequence;
  }

  /**
   * Takes the next arrival.
   *
   * @return what is found by it; empty when it is the next event and follows from the one before
   * @throws IllegalArgumentException when it is of another source than those before: every device
   *     has a chain of its own
   */
  public List<ChainFinding> take(ChainedEvent event) {
    checkSource(event);
    long number = event.sequence();
    if (!begun) {
      begin(number - 1, number == 1 ? ChainLink.START.chain() : null);
    }
    List<ChainFinding> found = new ArrayList<>();
    if (number <= start) {
      found.add(ChainFinding.of(earlier(event), number));
    } else if (seen.containsKey(number)) {
      found.add(ChainFinding.of(again(event), number));
    } else {
      place(event, found);
      follow(event, found);
    }
    found.forEach(finding -> counts.merge(finding.kind(), 1L, Long::sum));
    return List.copyOf(found);
  }

  private void checkSource(ChainedEvent event) {
    if (source == null) {
      source = event.source();
    }
    if (!source.equals(event.source())) {
      throw new IllegalArgumentException(
          "an event of "
              + event.source()
              + " came into the check of "
              + source
              + "; make one check for each source");
    }
  }

  private ChainFinding.Kind earlier(ChainedEvent event) {
    boolean other = event.sequence() == start && !event.chain().equals(startChain);
    return other && startChain != null ? ChainFinding.Kind.CHANGED : ChainFinding.Kind.EARLIER;
  }

  private ChainFinding.Kind again(ChainedEvent event) {
    boolean same = seen.get(event.sequence()).fingerprint().equals(event.fingerprint());
    return same ? ChainFinding.Kind.DOUBLE : ChainFinding.Kind.CHANGED;
  }

  private void place(ChainedEvent event, List<ChainFinding> found) {
    long number = event.sequence();
    seen.put(number, new Seen(event.chain(), event.fingerprint()));
    if (number <= highest) {
      gaps.fill(number);
      found.add(ChainFinding.of(ChainFinding.Kind.LATE, number));
      return;
    }
    if (number > highest + 1) {
      gaps.open(highest + 1, number - 1);
      found.add(new ChainFinding(ChainFinding.Kind.GAP, highest + 1, number - 1));
    }
    highest = number;
  }

  private void follow(ChainedEvent event, List<ChainFinding> found) {
    long number = event.sequence();
    String before = chainOf(number - 1);
    if (before != null) {
      compare(event, before, found);
    } else if (number - 1 > start) {
      waiting.put(number, event);
    }
    ChainedEvent after = waiting.remove(number + 1);
    if (after != null) {
      compare(after, event.chain(), found);
    }
  }

  private String chainOf(long number) {
    if (number == start) {
      return startChain;
    }
    Seen event = seen.get(number);
    return event == null ? null : event.chain();
  }

  private static void compare(ChainedEvent event, String before, List<ChainFinding> found) {
    if (!event.follows(before)) {
      found.add(ChainFinding.of(ChainFinding.Kind.BROKEN, event.sequence()));
    }
  }

  /** How many different events have arrived. */
  public long events() {
    return seen.size();
  }

  /** How often something was found. */
  public long count(ChainFinding.Kind kind) {
    return counts.getOrDefault(kind, 0L);
  }

  /** What is missing now: gaps that nothing has filled, in order. */
  public List<ChainFinding> missing() {
    return gaps.open();
  }

  /** How many events are missing now. */
  public long missingEvents() {
    return missing().stream().mapToLong(gap -> gap.last() - gap.first() + 1).sum();
  }

  /** Number of the highest event that has arrived; where the check began, before any has. */
  public long highest() {
    return highest;
  }

  /** True when nothing is missing and nothing was altered; doubled and late events are allowed. */
  public boolean isWhole() {
    return missing().isEmpty()
        && count(ChainFinding.Kind.BROKEN) == 0
        && count(ChainFinding.Kind.CHANGED) == 0;
  }
}
