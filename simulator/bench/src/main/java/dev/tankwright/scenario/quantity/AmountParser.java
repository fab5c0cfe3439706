package dev.tankwright.scenario.quantity;

import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.TextFault;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads quantities: a number in digits, at most one space, a unit. */
public final class AmountParser {
  /**
   * What a number looks like, as a regular expression. More decimals than a person writes, so that
   * every number that the program has can be written and read again.
   */
  public static final String NUMBER_FORM = "-?[0-9]{1,15}(\\.[0-9]{1,25})?";

  private static final Pattern NUMBER = Pattern.compile(NUMBER_FORM);
  private static final Pattern SCIENTIFIC = Pattern.compile("[-+]?[0-9.]+[eE][-+]?[0-9]+.*");
  private static final String NUMBER_SIGNS = "0123456789.,+-_";

  private AmountParser() {}

  /**
   * Reads a quantity.
   *
   * @param text the whole value
   * @param wanted what it must be
   * @param subject what is read, for messages
   */
  public static Amount parse(String text, Dimension wanted, String subject) throws TextFault {
    int end = numberEnd(text);
    String number = text.substring(0, end);
    int unitStart = end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
    String symbol = text.substring(unitStart);
    checkNumber(text, number, wanted, subject);
    Dimension.UnitSymbol unit = find(wanted, symbol);
    if (unit == null) {
      throw new TextFault(
          symbol.isEmpty() ? 0 : unitStart, wrongUnit(text, symbol, wanted, subject));
    }
    BigDecimal numerator = new BigDecimal(number).subtract(unit.shift()).multiply(unit.factor());
    String shown = symbol.isEmpty() ? number : number + " " + symbol;
    return new Amount(numerator, unit.divisor(), wanted, shown);
  }

  private static int numberEnd(String text) {
    int end = 0;
    while (end < text.length() && NUMBER_SIGNS.indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    return end;
  }

  private static void checkNumber(String text, String number, Dimension wanted, String subject)
      throws TextFault {
    if (SCIENTIFIC.matcher(text).matches()) {
      throw new TextFault(
          0, subject + " is " + Quote.of(text) + "; write the number in digits, without exponent");
    }
    Matcher matcher = NUMBER.matcher(number);
    if (matcher.matches()) {
      return;
    }
    String advice =
        number.indexOf(',') >= 0
            ? "write the decimals after a point, for example "
            : "write a number of at most 15 digits, for example ";
    throw new TextFault(
        0, subject + " is " + Quote.of(text) + ", which is no number; " + advice + example(wanted));
  }

  private static Dimension.UnitSymbol find(Dimension dimension, String symbol) {
    for (Dimension.UnitSymbol unit : dimension.units()) {
      if (unit.symbol().equals(symbol)) {
        return unit;
      }
    }
    return null;
  }

  private static String wrongUnit(String text, String symbol, Dimension wanted, String subject) {
    String given = subject + " is " + Quote.of(text);
    String right = subject + " is " + wanted.noun() + wanted.choices();
    if (symbol.isEmpty()) {
      return given + " without a unit; " + right;
    }
    for (Dimension other : Dimension.values()) {
      if (find(other, symbol) != null) {
        return given + ", " + other.noun() + "; " + right;
      }
    }
    List<String> symbols = new ArrayList<>();
    wanted.units().forEach(unit -> symbols.add(unit.symbol()));
    String meant =
        Nearest.of(symbol, symbols)
            .filter(s -> !s.isEmpty())
            .map(s -> " (did you mean " + s + "?)")
            .orElse("");
    return subject + " has the unknown unit " + Quote.of(symbol) + meant + "; " + right;
  }

  private static String example(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> "40 °C";
      case DIFFERENCE -> "2 K";
      case DRIFT -> "-1 K/min";
      case VOLUME -> "4.5 L";
      case TIME -> "90 s";
      case POWER -> "300 W";
      case MASS -> "800 g";
      case AREA -> "450 cm²";
      case LENGTH -> "10 mm";
      case HEAT_CAPACITY -> "170 J/K";
      case CONDUCTANCE -> "60 W/K";
      case TRANSFER -> "8 W/(m² K)";
      case POWER_DENSITY -> "8 W/L";
      case VELOCITY -> "3 cm/h";
      case SPECIFIC_SURFACE -> "0.15 m²/kg";
      case VOLUME_PER_MASS -> "1 L/kg";
      case FRACTION -> "95 %";
      case FREQUENCY -> "40 kHz";
      case RESISTANCE -> "1000 ohm";
      case NUMBER -> "5";
    };
  }
}
