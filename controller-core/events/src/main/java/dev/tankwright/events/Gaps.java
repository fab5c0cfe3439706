package dev.tankwright.events;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Ranges of numbers that have not arrived. Not thread-safe. */
final class Gaps {
  private final TreeMap<Long, Long> lastByFirst = new TreeMap<>();

  void open(long first, long last) {
    lastByFirst.put(first, last);
  }

  /** A number of an open range has arrived: what is left of the range stays open. */
  void fill(long number) {
    Map.Entry<Long, Long> range = lastByFirst.floorEntry(number);
    long first = range.getKey();
    long last = range.getValue();
    lastByFirst.remove(first);
    if (first < number) {
      lastByFirst.put(first, number - 1);
    }
    if (number < last) {
      lastByFirst.put(number + 1, last);
    }
  }

  List<ChainFinding> open() {
    return lastByFirst.entrySet().stream()
        .map(r -> new ChainFinding(ChainFinding.Kind.GAP, r.getKey(), r.getValue()))
        .toList();
  }
}
