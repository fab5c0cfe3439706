package dev.tankwright.report.run;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.text.ParameterText;

/** The controller's limits and times, with what each may be and whether it differs. */
final class ParameterTable {
  private ParameterTable() {}

  static String of(DeviceProfile profile) {
    Html html = new Html();
    html.raw("<table class=\"profile\">\n<thead><tr>").column("", "Parameter");
    html.column("num", "Value").column("num", "Standard").column("num", "Range");
    html.raw("</tr></thead>\n<tbody>\n");
    for (Parameter parameter : Parameter.values()) {
      row(html, parameter, profile.get(parameter));
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  /** How many parameters differ from the standard. */
  static int changed(DeviceProfile profile) {
    int changed = 0;
    for (Parameter parameter : Parameter.values()) {
      changed += profile.get(parameter) == parameter.standard() ? 0 : 1;
    }
    return changed;
  }

  private static void row(Html html, Parameter parameter, int value) {
    boolean changed = value != parameter.standard();
    html.raw(changed ? "<tr class=\"changed\">" : "<tr>").raw("<th scope=\"row\">");
    html.text(parameter.key()).raw("</th><td class=\"num\">");
    html.text(ParameterText.of(parameter, value)).raw(changed ? " <em>changed</em>" : "");
    html.raw("</td><td class=\"num\">").text(ParameterText.of(parameter, parameter.standard()));
    html.raw("</td><td class=\"num\">").text(ParameterText.of(parameter, parameter.minimum()));
    html.raw(" to ").text(ParameterText.of(parameter, parameter.maximum())).raw("</td></tr>\n");
  }
}
