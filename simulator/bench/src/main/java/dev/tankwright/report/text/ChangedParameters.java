package dev.tankwright.report.text;

import dev.tankwright.controller.board.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Parameters of a saved run, which may know other ones than this program does. */
public final class ChangedParameters {
  private ChangedParameters() {}

  /** Those that are not standard, in words; empty when there are none. */
  public static String of(Map<String, Integer> controller) {
    List<String> changed = new ArrayList<>();
    for (Parameter parameter : Parameter.values()) {
      Integer value = controller.get(parameter.key());
      if (value != null && value != parameter.standard()) {
        changed.add(
            parameter.key()
                + " "
                + ParameterText.of(parameter, value)
                + " (standard "
                + ParameterText.of(parameter, parameter.standard())
                + ")");
      }
    }
    return String.join(", ", changed);
  }

  /** A value in its unit, or as it is when this program does not know the parameter. */
  public static String value(String key, Integer value) {
    if (value == null) {
      return "not there";
    }
    for (Parameter parameter : Parameter.values()) {
      if (parameter.key().equals(key)) {
        return ParameterText.of(parameter, value);
      }
    }
    return Integer.toString(value);
  }
}
