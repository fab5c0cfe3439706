package dev.tankwright.explore;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Unit;
import dev.tankwright.rule.Rule;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A broken rule as a scenario file: what stood on the pins, scan by scan, is forced on them, so
 * that a run breaks the same rule in the same scan.
 */
public final class TraceFile {
  /** For how many scans the way back to STANDBY is tried. */
  static final int BACK_SCANS = 60;

  private static final int MILLIS = 1_000;
  private static final String ABSENT = "ABSENT";
  private static final int LONGEST_PURPOSE = 900;

  private TraceFile() {}

  /** Name of the file, the same for the same rule and set. */
  public static String name(Violation violation) {
    String faulty = violation.faulty().replace(" and ", "+");
    String rule = violation.rule().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return rule + "--" + faulty + ".yaml";
  }

  /**
   * Content of the file.
   *
   * @param profile the limits with the short times that were explored
   */
  public static String of(Violation violation, DeviceProfile profile) {
    StringBuilder text = new StringBuilder();
    String rule = violation.rule().name();
    text.append("# Written by an exploration. Times are shortened: a proof about logic only.\n");
    text.append("scenario: ").append(rule).append(" is broken\n");
    String purpose =
        "Shortest way to a scan that breaks this rule: " + violation.rule().statement();
    text.append("purpose: '").append(quoted(purpose)).append("'\n");
    text.append("duration: ").append(seconds(violation)).append(" s\n");
    text.append("bath: {fill: 4.5 L, temperature: 39 °C}\n");
    controller(profile, text);
    text.append("timeline:\n");
    timeline(violation, text);
    text.append("requirements:\n  - name: '").append(quoted(violation.rule().statement()));
    text.append("'\n");
    if (!violation.rule().requirement().isEmpty()) {
      text.append("    id: ").append(violation.rule().requirement()).append('\n');
    }
    text.append(
        violation.rule() == Rule.STANDBY_IN_REACH
            ? "    within: 500 ms\n    after: part-broken\n    holds: phase = STANDBY\n"
            : "    always: broken-rule = NONE\n");
    return text.toString();
  }

  private static long millisToBack(Violation violation) {
    long millis = 0;
    for (int scan = 0; scan < violation.scans().size() - BACK_SCANS; scan++) {
      int off = violation.scans().get(scan).offSeconds();
      millis += off <= 0 ? ShortTimes.SCAN_MS : (long) MILLIS * off;
    }
    return millis;
  }

  private static int seconds(Violation violation) {
    int off = violation.scans().stream().mapToInt(scan -> Math.max(0, scan.offSeconds())).sum();
    return 1 + off + violation.scans().size() / 100;
  }

  private static String quoted(String text) {
    return text.substring(0, Math.min(LONGEST_PURPOSE, text.length())).replace("'", "''");
  }

  private static void controller(DeviceProfile profile, StringBuilder text) {
    text.append("controller:\n  short-time: on\n");
    for (Parameter parameter : Parameter.values()) {
      if (profile.get(parameter) != parameter.standard()) {
        text.append("  ").append(parameter.key()).append(": ");
        text.append(value(parameter.unit(), profile.get(parameter))).append('\n');
      }
    }
  }

  private static String value(Unit unit, int value) {
    return switch (unit) {
      case MILLI_CELSIUS -> milli(value) + " °C";
      case MILLI_KELVIN -> milli(value) + " K";
      case MILLISECONDS -> value + " ms";
      case HERTZ -> value + " Hz";
      case PERMILLE -> milli(value);
      case MILLI_OHM -> milli(value) + " ohm";
      case NUMBER -> Integer.toString(value);
      case SECONDS -> value + " s";
      case WATT -> value + " W";
    };
  }

  private static String milli(int value) {
    return BigDecimal.valueOf(value, 3).stripTrailingZeros().toPlainString();
  }

  private static void timeline(Violation violation, StringBuilder text) {
    Map<String, String> before = new LinkedHashMap<>();
    if (violation.rule() == Rule.STANDBY_IN_REACH) {
      long from = millisToBack(violation);
      text.append(
          "  # From here on all parts are healthy and the operator tries to come back. The\n");
      text.append("  # fuse, which no pin sees, only marks the moment for the requirement.\n");
      text.append("  - at: ").append(from).append(" ms\n    break: fuse-stuck\n");
    }
    int number = 0;
    long millis = -ShortTimes.SCAN_MS;
    for (PinScan now : violation.scans()) {
      millis += ShortTimes.SCAN_MS;
      if (now.isCut()) {
        millis += cut(now, millis, text);
        continue;
      }
      number += now.fresh() ? 1 : 0;
      Map<String, String> pins = pins(now.pins(), number);
      pins.entrySet().removeIf(pin -> pin.getValue().equals(before.get(pin.getKey())));
      before.putAll(pins);
      if (!pins.isEmpty()) {
        text.append("  - at: ").append(millis).append(" ms\n    force:\n");
        pins.forEach(
            (pin, value) ->
                text.append("      ").append(pin).append(": ").append(value).append('\n'));
      }
    }
  }

  /** Writes a loss of power and tells for how many scans longer than one it lasts, ms. */
  private static int cut(PinScan scan, long millis, StringBuilder text) {
    int offMs = scan.offSeconds() == 0 ? ShortTimes.SCAN_MS : MILLIS * scan.offSeconds();
    if (scan.damaged()) {
      text.append("  - at: ").append(millis).append(" ms\n    break: memory-damaged\n");
    }
    text.append("  - at: ").append(millis).append(" ms\n    cut-power: ");
    text.append(offMs).append(" ms\n");
    return offMs - ShortTimes.SCAN_MS;
  }

  private static Map<String, String> pins(PinScan.Pins p, int number) {
    Map<String, String> pins = new LinkedHashMap<>();
    pins.put("counter", Integer.toString(p.counter()));
    pins.put("control-sensor", Integer.toString(p.controlSensor()));
    pins.put("cut-off-sensor", Integer.toString(p.cutOffSensor()));
    pins.put("lid-make-contact", word(p.lidMakeContact()));
    pins.put("lid-break-contact", word(p.lidBreakContact()));
    pins.put("minimum-level", word(p.minimumLevel()));
    pins.put("fill-mark", word(p.fillMark()));
    pins.put("drain-open-end", word(p.drainOpenEnd()));
    pins.put("drain-closed-end", word(p.drainClosedEnd()));
    pins.put("heater-current", word(p.heaterCurrent()));
    pins.put("generator-running", word(p.generatorRunning()));
    pins.put("generator-fault", word(p.generatorFault()));
    pins.put("mains", word(p.mains()));
    pins.put("command", name(p.command()));
    pins.put("command-number", Integer.toString(number));
    pins.put("recipe", p.command() == Command.START ? recipe(p.recipe()) : ABSENT);
    pins.put("foil-verdict", name(p.verdict()));
    return pins;
  }

  private static String word(boolean on) {
    return on ? "on" : "off";
  }

  private static String name(Enum<?> constant) {
    return constant == null ? ABSENT : constant.name();
  }

  private static String recipe(Recipe recipe) {
    if (recipe == null) {
      return ABSENT;
    }
    return "'"
        + recipe.programme()
        + ", "
        + milli(recipe.setpointMilliC())
        + " °C, "
        + recipe.degasMs()
        + " ms, "
        + recipe.cleanMs()
        + " ms'";
  }
}
