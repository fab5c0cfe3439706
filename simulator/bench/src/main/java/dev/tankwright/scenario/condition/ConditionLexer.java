package dev.tankwright.scenario.condition;

import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.TextFault;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a condition into words, signs and quantities. */
final class ConditionLexer {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<word>[A-Za-z][A-Za-z0-9_-]*)"
              + "|(?<amount>[-+]?\\.?[0-9][0-9.,_]*(?:[eE][-+]?[0-9]+)?"
              + "(?: ?(?!(?:and|or|not)\\b)[A-Za-z°%\u03a9\u2126]+)?)"
              + "|(?<sign><=|>=|==|!=|<>|=<|=>|&&|\\|\\||[<>=!()&|])");

  /** Kinds of token. */
  enum Kind {
    /** A name or a keyword. */
    WORD,
    /** A number with its unit. */
    AMOUNT,
    /** A comparison or a parenthesis. */
    SIGN,
    /** Behind the last token. */
    END
  }

  /**
   * A token.
   *
   * @param kind what it is
   * @param text as written
   * @param offset chars from the beginning of the condition
   */
  record Token(Kind kind, String text, int offset) {
    boolean is(String wanted) {
      return kind != Kind.AMOUNT && text.equals(wanted);
    }
  }

  private ConditionLexer() {}

  static List<Token> tokens(String text) throws TextFault {
    List<Token> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
        continue;
      }
      matcher.region(at, text.length());
      if (!matcher.lookingAt()) {
        String sign = new String(Character.toChars(text.codePointAt(at)));
        throw new TextFault(
            at, Quote.of(sign) + " has no meaning in a condition; " + ConditionParser.FORM);
      }
      tokens.add(new Token(kind(matcher), matcher.group(), at));
      at = matcher.end();
    }
    tokens.add(new Token(Kind.END, "", text.length()));
    return tokens;
  }

  private static Kind kind(Matcher matcher) {
    if (matcher.group("word") != null) {
      return Kind.WORD;
    }
    return matcher.group("amount") != null ? Kind.AMOUNT : Kind.SIGN;
  }
}
