package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.scenario.lint.ScenarioLint;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are no scenario at all: each gives one message and no stack trace. */
class BadBytesTest {
  @TempDir private Path folder;

  private static void assertRefused(String expected, String text) {
    assertRefused(expected, text.getBytes(UTF_8));
  }

  private static void assertRefused(String expected, byte[] bytes) {
    ScenarioException e =
        assertThrows(ScenarioException.class, () -> ScenarioReader.read("f", bytes));
    assertEquals("f:" + expected, e.getMessage());
  }

  private static void assertRefused(String expected, Path path) {
    ScenarioException e = assertThrows(ScenarioException.class, () -> ScenarioReader.read(path));
    assertEquals(path + ":1:1: " + expected, e.getMessage());
  }

  @Test
  void filesThatCannotBeRead() throws IOException {
    Path missing = folder.resolve("missing.yaml");
    assertRefused("there is no such file; check its name and folder", missing);
    assertRefused("this is a directory; name a scenario file in it", folder);
  }

  @Test
  void aLargeFileIsRefusedBeforeItIsRead() throws IOException {
    Path large = folder.resolve("large.yaml");
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(50L * 1024 * 1024);
    }
    assertRefused("the file has 52428800 bytes; a scenario has at most 1048576", large);
    assertRefused(
        "1:1: the file has 1048577 bytes; a scenario has at most 1048576", new byte[1_048_577]);
  }

  @Test
  void aFileIsReadAsItsBytesAre() throws IOException, ScenarioException {
    Path small = folder.resolve("small.yaml");
    Files.writeString(small, ScenarioReaderTest.SMALL);
    assertEquals("small.yaml", ScenarioReader.read(small).file());
    assertEquals("Small", ScenarioLint.of(small).scenario().title());
  }

  @Test
  void bytesThatAreNoText() {
    String advice = " does not belong to UTF-8 text; save the file as UTF-8";
    assertRefused("2:10: the byte 0xb0" + advice, "a: b\nfill: 19 °C\n".getBytes(ISO_8859_1));
    assertRefused("1:1: the byte 0xfe" + advice, new byte[] {(byte) 0xfe, (byte) 0xff, 0, 97});
    assertRefused("1:4: the byte 0xc3" + advice, new byte[] {'a', ':', ' ', (byte) 0xc3});
    // Overlong and surrogate forms: RFC 3629, sections 3 and 10, cited from memory.
    assertRefused("1:1: the byte 0xc0" + advice, new byte[] {(byte) 0xc0, (byte) 0x80});
    assertRefused(
        "1:1: the byte 0xed" + advice, new byte[] {(byte) 0xed, (byte) 0xa0, (byte) 0x80});
    // A character outside the basic plane is one column wide.
    assertRefused(
        "1:3: the byte 0xff" + advice,
        new byte[] {'a', (byte) 0xf0, (byte) 0x9f, (byte) 0x9b, (byte) 0x81, (byte) 0xff});
    assertRefused(
        "1:1: the character U+0000 cannot be seen; remove it, or use a plain space",
        "a: b".getBytes(UTF_16BE));
  }

  @Test
  void charactersThatCannotBeSeen() {
    String advice = " cannot be seen; remove it, or use a plain space";
    assertRefused("1:4: the character U+0000" + advice, "a: \0");
    assertRefused("2:1: the character U+001B" + advice, "a: b\n\u001b[0m");
    assertRefused("1:6: the character U+00A0" + advice, "a: 70\u00a0°C");
    assertRefused("1:4: the character U+200B" + advice, "a: \u200bb");
    assertRefused("1:4: the character U+202E" + advice, "a: \u202eb");
    assertRefused("1:5: the character U+FEFF" + advice, "a: b\ufeff");
    assertRefused("2:1: a tab; use spaces", "a:\n\tb: c");
    assertRefused("1:4: a tab; use spaces", "a: \tb");
    assertRefused("1:4: this text holds U+0000 by an escape; leave it out", "a: \"x\\0\"");
    assertRefused("1:4: this text holds U+0007 by an escape; leave it out", "a: \"x\\a\"");
  }

  @Test
  void nothingAtAll() {
    String message = "1:1: the file is empty; a scenario begins with 'scenario:' and its title";
    assertRefused(message, "");
    assertRefused(message, "\n\n# nothing\n");
    assertRefused(message, "\ufeff");
    assertRefused("1:1: a scenario begins with 'scenario:' and its title; here is a list", "- a\n");
    assertRefused(
        "1:1: a scenario begins with 'scenario:' and its title; here is a single value", "hello");
    assertRefused(
        "2:1: a scenario begins with 'scenario:' and its title; here is nothing", "---\n");
  }

  @Test
  void severalDocuments() {
    assertRefused(
        "2:1: a second document begins here; a file holds one scenario", "a: b\n---\nc: d\n");
  }

  @Test
  void whatYamlOffersAndScenariosDoNotUse() {
    String anchors = "anchors (&) and aliases (*) are not used here; write the value out";
    assertRefused("1:4: " + anchors, "a: &x b\nc: *x\n");
    assertRefused("1:4: " + anchors, "a: *x\n");
    assertRefused("1:4: tags (!) are not used here; write the value alone", "a: !!int 5\n");
    assertRefused("1:4: tags (!) are not used here; write the value alone", "a: !x [b]\n");
    assertRefused("1:1: merge keys are not used here; write the keys out", "<<: {a: b}\n");
  }

  /** Nine levels of nine aliases each would be 9^9 values. */
  @Test
  void anAliasBombIsRefusedAtItsFirstAnchor() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 10; i++) {
      String alias = "*a" + (i - 1);
      String aliases = String.join(", ", Collections.nCopies(9, alias));
      bomb.append("a" + i + ": &a" + i + " [" + aliases + "]\n");
    }
    assertRefused(
        "1:5: anchors (&) and aliases (*) are not used here; write the value out", bomb.toString());
  }

  @ParameterizedTest
  @CsvSource({"'[',1:9", "'{',1:9", "'- ',1:17", "'{a: ',1:33", "'? ',1:17"})
  void deepNestingIsRefusedAtTheNinthLevel(String piece, String place) {
    assertRefused(
        place + ": nested deeper than 8 levels; a scenario needs no more than three",
        piece.repeat(100_000));
  }

  @Test
  void brokenYamlIsToldInOneLine() {
    String invalid = "this is not valid YAML (";
    assertRefused(
        "2:9: "
            + invalid
            + "mapping values are not allowed here); put a text that has a colon and a space in it"
            + " in quotes, or indent the key under its parent",
        "a: b\npurp: x : y\n");
    assertRefused(
        "2:1: "
            + invalid
            + "could not find expected ':'); write 'key: value', with a colon after"
            + " the key",
        "a: b\nc\nd\n");
    assertRefused(
        "1:4: " + invalid + "found unexpected end of stream); close the quotes that open here",
        "a: \"b\n\n");
    assertRefused(
        "1:4: "
            + invalid
            + "expected ',' or ']', but got <stream end>); close the bracket that opens here, or"
            + " put commas between its items",
        "a: [b, c\n");
    assertRefused(
        "1:4: "
            + invalid
            + "found character '@' that cannot start any token. (Do not use @ for indentation));"
            + " put a text that begins like this in quotes",
        "a: @b\n");
  }
}
