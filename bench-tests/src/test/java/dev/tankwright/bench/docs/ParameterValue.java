package dev.tankwright.bench.docs;

import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import java.math.BigDecimal;

/** Values of parameters as the pages print them: in the units of scenario files. */
final class ParameterValue {
  private static final int SECOND = 1_000;
  private static final int MINUTE = 60_000;
  private static final int SECONDS_PER_HOUR = 3_600;

  private ParameterValue() {}

  static String standard(Parameter parameter) {
    return of(parameter.unit(), parameter.standard());
  }

  static String range(Parameter parameter) {
    String least = of(parameter.unit(), parameter.minimum());
    return least + " to " + of(parameter.unit(), parameter.maximum());
  }

  private static String of(Unit unit, int value) {
    return switch (unit) {
      case MILLI_CELSIUS -> scaled(value, 3) + " °C";
      case MILLI_KELVIN -> scaled(value, 3) + " K";
      case MILLISECONDS -> time(value);
      case SECONDS -> longTime(value);
      case WATT -> value + " W";
      case HERTZ -> value + " Hz";
      case PERMILLE -> scaled(value, 1) + " %";
      case MILLI_OHM -> scaled(value, 3) + " ohm";
      case NUMBER -> Integer.toString(value);
    };
  }

  private static String time(int millis) {
    if (millis >= MINUTE && millis % MINUTE == 0) {
      return millis / MINUTE + " min";
    }
    return millis >= SECOND && millis % SECOND == 0 ? millis / SECOND + " s" : millis + " ms";
  }

  private static String longTime(int seconds) {
    boolean hours = seconds % SECONDS_PER_HOUR == 0;
    return hours ? seconds / SECONDS_PER_HOUR + " h" : seconds + " s";
  }

  private static String scaled(int value, int decimals) {
    BigDecimal number = BigDecimal.valueOf(value, decimals).stripTrailingZeros();
    return value == 0 ? "0" : number.toPlainString();
  }
}
