package dev.tankwright.report.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.report.SampleRun;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.text.Columns;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConsoleSummaryTest {

  @Test
  void saysEveryVerdictOnALineOfItsOwn() {
    String text = ConsoleSummary.of(SampleRun.of(), SampleRun.events(), false);
    assertEquals(
        """
        First cycle of the morning

        held           SR-03  The solution stays below the cut-off  margin 27.4 K at 38:12.12
        held           SR-01  Opening silences the bath             margin 10 ms at 38:12.12
        FAILED                The cycle completes                   margin -inf at 38:12.12
                              The solution reached 40.6 \u00B0C.
        not exercised  SR-07  A welded relay is found
                              The relay never welded.

        phase         entered at      lasted    solution at the end
        Standby             0:00        0:10                19.0 \u00B0C
        Heating             0:10       14:50                40.0 \u00B0C
        """,
        text.substring(0, text.indexOf("Degassing")));
    assertTrue(
        text.endsWith("\n1 of 4 failed (2 held, 1 not exercised); events: 11 of 12 received.\n"));
  }

  @Test
  void staysWithinItsWidthAndBreaksNamesBetweenWords() {
    String name = "A requirement with a name that goes on and on ".repeat(5).strip();
    Verdict verdict = SampleRun.verdict(name, "SR-99", Verdict.Outcome.FAILED, -1.5, "K");
    Verdict unbroken = SampleRun.verdict("x".repeat(250), "", Verdict.Outcome.HELD, 1, "K");
    String text = plain(SampleRun.with(List.of(verdict, unbroken)));
    assertTrue(text.lines().allMatch(line -> Columns.width(line) <= ConsoleSummary.WIDTH), text);
    assertTrue(text.lines().noneMatch(line -> line.endsWith(" ")), text);
    String words = text.replaceAll("\\s+", " ");
    assertTrue(words.contains("goes on and on A requirement with a name that goes"), words);
  }

  @Test
  void lendsNoTextOfAFileTheTerminal() {
    String name = "a\u001B[2Jb\rc\u202Ed\u0007";
    Verdict verdict = SampleRun.verdict(name, "", Verdict.Outcome.HELD, 1, "K");
    String text = plain(SampleRun.with(List.of(verdict)));
    assertTrue(text.contains("a [2Jb c d"), text);
    assertTrue(text.chars().noneMatch(c -> c == 0x1B || c == '\r' || c == 0x202E || c == 7));
  }

  @Test
  void coloursOnlyWhenToldAndSaysTheSame() {
    String plain = plain(SampleRun.of());
    String coloured = ConsoleSummary.of(SampleRun.of(), EventsSeen.none(), true);
    assertFalse(plain.contains("\u001B"));
    assertTrue(coloured.contains("\u001B[32mheld\u001B[0m"));
    assertTrue(coloured.contains("\u001B[1;31mFAILED\u001B[0m"));
    assertEquals(plain, coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  @Test
  void speaksAsciiAndTheDegreeSign() {
    assertTrue(plain(SampleRun.of()).chars().allMatch(c -> c < 0x7F || c == 0xB0));
  }

  private static String plain(RunResult run) {
    return ConsoleSummary.of(run, EventsSeen.none(), false);
  }
}
