package dev.tankwright.report.profile;

import dev.tankwright.plant.WallProtection;
import dev.tankwright.plant.facts.BathFacts;
import dev.tankwright.plant.facts.Curve;
import dev.tankwright.plant.facts.Fact;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.Page;
import dev.tankwright.report.text.Decimal;
import java.util.List;

/**
 * What follows from a bath's profile as one HTML page that needs nothing else: table, plots and
 * cautions; its policy forbids it to fetch anything. The same bath gives the same bytes.
 */
public final class ProfilePage {
  private ProfilePage() {}

  /** The page, UTF-8. */
  public static byte[] render(BathFacts facts) {
    String name = facts.profile().name();
    return new Page("profile.html")
        .title(name)
        .plots()
        .style("palette.css", "report.css", "plots.css")
        .script("ink.js", "profile.js")
        .put("name", new Html().text(name).toString())
        .put("facts", table(facts.facts()))
        .put("data", data(facts))
        .render();
  }

  private static String table(List<Fact> facts) {
    Html html = new Html();
    html.raw("<table>\n<thead><tr>").column("", "What").column("num", "Value");
    html.column("", "Unit").column("", "Conditions").raw("</tr></thead>\n<tbody>\n");
    for (Fact fact : facts) {
      html.raw("<tr><th scope=\"row\">").text(fact.what()).raw("</th><td class=\"num\">");
      html.text(FactsText.number(fact)).raw("</td><td>").text(FactsText.unit(fact));
      html.raw("</td><td>").text(fact.assumption()).raw("</td></tr>\n");
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  private static String data(BathFacts facts) {
    StringBuilder out = new StringBuilder(1 << 15);
    out.append("{\"limiter\":").append(Decimal.of(WallProtection.LIMITER_CELSIUS, 1));
    out.append(",\"fuse\":").append(Decimal.of(WallProtection.FUSE_CELSIUS, 1));
    curve(out.append(",\n\"on\":"), facts.lidOn());
    curve(out.append(",\n\"off\":"), facts.lidOff());
    curve(out.append(",\n\"dry\":"), facts.dryWall());
    return out.append('}').toString();
  }

  private static void curve(StringBuilder out, Curve curve) {
    out.append("{\"step\":").append(Decimal.of(curve.stepSeconds(), 3)).append(",\"v\":[");
    String before = "";
    for (double celsius : curve.celsius()) {
      out.append(before).append(Decimal.of(celsius, 2));
      before = ",";
    }
    out.append("]}");
  }
}
