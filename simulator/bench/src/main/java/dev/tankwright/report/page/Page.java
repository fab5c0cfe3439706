package dev.tankwright.report.page;

import dev.tankwright.scenario.Verdict;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An HTML page that needs nothing else: styles, scripts and data are inside, and its policy forbids
 * it to fetch anything. Every page has the same frame and the same cautions; what differs is the
 * body, a template of its own. One thread.
 */
public final class Page {
  private final String body;
  private final Map<String, String> fillings = new HashMap<>();
  private final List<String> styles = new ArrayList<>();
  private final List<String> scripts = new ArrayList<>();
  private String title = "";
  private String icon = "";
  private String licence = "";

  /** Makes a page with the body of this template. */
  public Page(String template) {
    body = Resource.own(template);
    put("cautions", Resource.own("cautions.html"));
  }

  /** Sets the page's title, plain text. */
  public Page title(String text) {
    title = new Html().text(text).toString();
    return this;
  }

  /** Gives the page the icon of an outcome; without, it has none. */
  public Page icon(Verdict.Outcome outcome) {
    icon = "<link rel=\"icon\" href=\"" + Icon.of(outcome) + "\">\n";
    return this;
  }

  /** Brings what draws lines: before the page's own styles and scripts. */
  public Page plots() {
    styles.add(Resource.uplot("dist/uPlot.min.css"));
    scripts.add(Resource.uplot("dist/uPlot.iife.min.js"));
    licence = "<!--\nuPlot, which draws the lines:\n" + Resource.uplot("LICENSE") + "\n-->\n";
    return this;
  }

  /** Brings these files as one style. */
  public Page style(String... names) {
    styles.add(Resource.own(List.of(names)));
    return this;
  }

  /** Brings these files, in this order, as one script. */
  public Page script(String... names) {
    scripts.add(Resource.own(List.of(names)));
    return this;
  }

  /** Fills a place of the body. */
  public Page put(String place, String html) {
    fillings.put(place, html);
    return this;
  }

  /**
   * The page, UTF-8.
   *
   * @throws IllegalArgumentException when a place of the body is not filled, or a filling has none
   */
  public byte[] render() {
    Map<String, String> frame =
        Map.of(
            "policy",
            Policy.of(scripts, styles),
            "title",
            title,
            "icon",
            icon,
            "styles",
            each("style", styles),
            "body",
            Template.fill(body, fillings),
            "scripts",
            licence + each("script", scripts));
    return Template.fill(Resource.own("frame.html"), frame).getBytes(StandardCharsets.UTF_8);
  }

  private static String each(String element, List<String> texts) {
    StringBuilder out = new StringBuilder(1 << 16);
    for (String text : texts) {
      out.append('<').append(element).append('>').append(text);
      out.append("</").append(element).append(">\n");
    }
    return out.toString();
  }
}
