package dev.tankwright.explore;

import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which words of the state take most distinct values: what makes a set of states grow. */
final class LargestWords {
  private static final int SHOWN_VALUES = 6;

  private LargestWords() {}

  static String of(StateSet states, int words) {
    return IntStream.range(0, states.wordCount())
        .boxed()
        .sorted(Comparator.comparing((Integer i) -> -states.word(i).count()))
        .limit(words)
        .map(i -> "word " + i + ": " + values(states.word(i)))
        .collect(Collectors.joining("; "));
  }

  private static String values(Dictionary word) {
    String first =
        IntStream.of(word.values())
            .limit(SHOWN_VALUES)
            .mapToObj(Integer::toString)
            .collect(Collectors.joining(", "));
    return word.count() + " values (" + first + (word.count() > SHOWN_VALUES ? ", ...)" : ")");
  }
}
