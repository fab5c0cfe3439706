package dev.tankwright.bench.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.explore.FaultySet;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ProofStateTest {
  private static final String OURS = "0123456789abcdef";

  @Test
  @DisplayName("a proof of all sets with this build's fingerprint is called whole")
  void whole() throws IOException {
    List<String> lines = lines(set -> OURS);
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).startsWith("[proof] whole: " + FaultySet.whole().size()), lines.get(0));
  }

  @Test
  @DisplayName("a proof of another controller is named with the command that proves this one")
  void ofAnotherController() throws IOException {
    List<String> lines = lines(set -> "fedcba9876543210");
    int sets = FaultySet.whole().size();
    assertTrue(
        lines.get(0).startsWith("[proof] NOT OF THIS CONTROLLER: " + sets + " of " + sets),
        lines.get(0));
    assertTrue(lines.get(0).contains(OURS), lines.get(0));
    assertTrue(lines.get(1).contains("explore --proven"), lines.get(1));
  }

  @Test
  @DisplayName("a single set of another controller is enough")
  void oneOfAnother() throws IOException {
    String first = FaultySet.whole().get(0).text();
    List<String> lines = lines(set -> set.equals(first) ? "fedcba9876543210" : OURS);
    assertTrue(lines.get(0).startsWith("[proof] NOT OF THIS CONTROLLER: 1 of"), lines.get(0));
  }

  private static List<String> lines(Function<String, String> fingerprint) throws IOException {
    String rows =
        FaultySet.whole().stream()
            .map(set -> set.text() + ",1,1,1,1,1," + fingerprint.apply(set.text()))
            .collect(Collectors.joining("\n"));
    String headings = "set,states,transitions,depth,bytes,seconds,fingerprint\n";
    return ProofState.lines(new StringReader(headings + rows), OURS);
  }
}
