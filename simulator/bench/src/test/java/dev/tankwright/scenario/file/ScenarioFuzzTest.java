package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Extent;
import dev.tankwright.scenario.lint.ScenarioLint;
import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random bytes and mutilated files, from fixed seeds: the reader answers with a scenario or with
 * problems in its own form, whatever it is given. The time bound only ends a reader that hangs.
 */
class ScenarioFuzzTest {
  private static final Duration HANGS = Duration.ofMinutes(2);
  private static final Pattern FORM = Pattern.compile("f:[0-9]+:[0-9]+: [^\\p{Cntrl}]{5,600}");
  private static final String[] PIECES = {
    "\n",
    "- ",
    ": ",
    "  ",
    "\t",
    "[",
    "]",
    "{",
    "}",
    "\"",
    "'",
    "#",
    "&a ",
    "*a ",
    "!t ",
    "|\n",
    ">\n",
    "%YAML 1.2\n",
    "---\n",
    "...\n",
    "? ",
    "<<: ",
    "°C",
    " °F",
    "and",
    "not ",
    "(",
    ")",
    "= ",
    "< ",
    "NaN",
    "1e999",
    "-",
    "0",
    "99999999999999999999",
    "null",
    "~",
    "\r\n",
    "\0",
    "é",
    "\\x00",
    "liquid-temperature",
    "phase",
    "CLEANING",
    "on: ",
    "then: ",
    "later: ",
    "name: ",
    ", "
  };

  /** True when the bytes made a scenario; the answer's form is asserted when they did not. */
  private static boolean isRead(byte[] bytes) {
    try {
      ScenarioLint.of("f", bytes);
      return true;
    } catch (ScenarioException e) {
      assertFalse(e.problems().isEmpty());
      for (Problem problem : e.problems()) {
        assertTrue(FORM.matcher(problem.toString()).matches(), problem::toString);
      }
      return false;
    }
  }

  static List<Long> randomBytesSeeds() {
    return Extent.some(List.of(1L, 2L, 3L), 1, "seeds of random bytes");
  }

  @ParameterizedTest
  @MethodSource("randomBytesSeeds")
  void randomBytes(long seed) {
    Random random = new Random(seed);
    assertTimeoutPreemptively(
        HANGS,
        () -> {
          for (int i = 0; i < 2000; i++) {
            byte[] bytes = new byte[random.nextInt(300)];
            random.nextBytes(bytes);
            assertFalse(isRead(bytes));
          }
        });
  }

  static List<Long> randomPiecesSeeds() {
    return Extent.some(List.of(4L, 5L, 6L), 1, "seeds of random pieces");
  }

  @ParameterizedTest
  @MethodSource("randomPiecesSeeds")
  void randomPieces(long seed) {
    Random random = new Random(seed);
    assertTimeoutPreemptively(
        HANGS,
        () -> {
          for (int i = 0; i < 3000; i++) {
            StringBuilder text = new StringBuilder();
            int count = random.nextInt(60);
            for (int k = 0; k < count; k++) {
              text.append(PIECES[random.nextInt(PIECES.length)]);
            }
            assertFalse(isRead(text.toString().getBytes(UTF_8)));
          }
        });
  }

  static List<Long> mutilatedFilesSeeds() {
    return Extent.some(List.of(7L, 8L, 9L, 10L), 1, "seeds of mutilated files");
  }

  @ParameterizedTest
  @MethodSource("mutilatedFilesSeeds")
  void mutilatedFiles(long seed) {
    Random random = new Random(seed);
    assertTimeoutPreemptively(
        HANGS,
        () -> {
          int read = 0;
          for (int i = 0; i < 1500; i++) {
            byte[] bytes = BadFile.GOOD.getBytes(UTF_8);
            int changes = 1 + random.nextInt(4);
            for (int k = 0; k < changes; k++) {
              bytes = mutilate(bytes, random);
            }
            read += isRead(bytes) ? 1 : 0;
          }
          assertTrue(read > 0 && read < 1500, "both answers must come up, " + read + " were read");
        });
  }

  private static byte[] mutilate(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    int length = random.nextInt(Math.min(20, bytes.length - at) + 1);
    byte[] piece =
        switch (random.nextInt(4)) {
          case 0 -> new byte[0];
          case 1 -> new byte[] {(byte) random.nextInt(256)};
          case 2 -> PIECES[random.nextInt(PIECES.length)].getBytes(UTF_8);
          default -> Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + 40));
        };
    byte[] result = Arrays.copyOf(bytes, bytes.length - length + piece.length);
    System.arraycopy(piece, 0, result, at, piece.length);
    System.arraycopy(bytes, at + length, result, at + piece.length, bytes.length - at - length);
    return result.length == 0 ? BadFile.GOOD.getBytes(UTF_8) : result;
  }

  /** A megabyte of one thing, for what a scanner could take much time over. */
  @Test
  void largeAndMonotonousFiles() {
    String[] pieces = {
      "\n",
      "- ",
      "-\n",
      "a: b\n",
      "a: [b]\n",
      "? a\n",
      "[",
      "{a: ",
      "\"",
      "# \n",
      "- - a\n",
      "'",
      "...\n",
      "- name: x\n",
      "é",
      "\\",
      "a b ",
      "|\n",
      "key: {}\n",
      "%a ",
      "!",
      "heater and "
    };
    for (String piece : Extent.some(List.of(pieces), 8, "megabytes of one thing")) {
      for (String start : new String[] {"", "requirements:\n  - always: ", "timeline:\n"}) {
        int times = (FileBytes.LARGEST_BYTES - 100) / piece.getBytes(UTF_8).length;
        byte[] bytes = (start + piece.repeat(times)).getBytes(UTF_8);
        assertTimeoutPreemptively(HANGS, () -> assertFalse(isRead(bytes)), start + piece);
      }
    }
  }
}
