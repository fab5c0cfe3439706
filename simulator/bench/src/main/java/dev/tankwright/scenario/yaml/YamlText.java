package dev.tankwright.scenario.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Turns a file's bytes into text, and refuses bytes and characters that a person cannot see. */
public final class YamlText {
  private YamlText() {}

  /** The text without a byte order mark at its beginning. */
  public static String decode(byte[] bytes, Problems problems) throws ScenarioException {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    boolean marked = text.startsWith("\ufeff");
    String body = marked ? text.substring(1) : text;
    refuseUnseen(body, problems);
    if (result.isError()) {
      throw problems.stop(
          end(body),
          "the byte 0x"
              + HexFormat.of().toHexDigits(bytes[in.position()])
              + " does not belong to UTF-8 text; save the file as UTF-8");
    }
    return body;
  }

  private static void refuseUnseen(String text, Problems problems) throws ScenarioException {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c >= ' ' && c <= '~') || c == '\n' || c == '\r') {
        continue;
      }
      if (c == '\t') {
        throw problems.stop(end(text.substring(0, i)), "a tab; use spaces");
      }
      if (isUnseen(c)) {
        throw problems.stop(
            end(text.substring(0, i)),
            "the character " + code(c) + " cannot be seen; remove it, or use a plain space");
      }
    }
  }

  /** A character by its number, {@code U+0000}. */
  static String code(char c) {
    return "U+" + HexFormat.of().withUpperCase().toHexDigits(c);
  }

  /** Control and format characters, and spaces that look like another one. */
  static boolean isUnseen(char c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      case Character.SPACE_SEPARATOR -> c != ' ';
      default -> c >= '\ufffe';
    };
  }

  /** The place just after a text. */
  private static Place end(String text) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if ((c == '\n' || c == '\r') && !pair) {
        line++;
        lineStart = i + 1;
      }
    }
    return new Place(line, text.codePointCount(lineStart, text.length()) + 1);
  }
}
