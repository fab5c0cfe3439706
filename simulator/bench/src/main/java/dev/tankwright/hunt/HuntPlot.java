package dev.tankwright.hunt;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;

/**
 * The margins of a search over its evaluations as a picture (SVG): a dot for each run that put the
 * requirement to the test, a line for the least margin so far, a tick below for each run that
 * showed nothing. Light or dark as the reader prefers.
 */
public final class HuntPlot {
  private static final int WIDTH = 800;
  private static final int HEIGHT = 420;
  private static final int LEFT = 80;
  private static final int RIGHT = 20;
  private static final int TOP = 50;
  private static final int BOTTOM = 60;
  private static final int TICKS = 5;
  private static final String STYLE =
      "<style>svg{background:#fff;color:#1a1a1a;font:14px sans-serif}"
          + ".dot{fill:#5b6b7a}.least{fill:none;stroke:#b3261e;stroke-width:2}.axis{stroke:currentColor}.grid{stroke:#8886}.zero{stroke:#b3261e;stroke-dasharray:6"
          + " 4}.none{stroke:#a86500}text{fill:currentColor}"
          + "@media(prefers-color-scheme:dark){svg{background:#16191d;color:#e6e6e6}"
          + ".dot{fill:#9db0c3}.least,.zero{stroke:#ff8a80}.none{stroke:#ffb74d}}</style>";

  private final HuntResult result;
  private final double low;
  private final double high;
  private final StringBuilder svg = new StringBuilder(4000);

  private HuntPlot(HuntResult result) {
    this.result = result;
    List<Double> finite =
        result.evaluations().stream()
            .map(one -> one.reading().rank())
            .filter(Double::isFinite)
            .toList();
    // Failing is below 0, so 0 belongs into the picture.
    double least = Math.min(0, finite.stream().mapToDouble(d -> d).min().orElse(0));
    double most = Math.max(0, finite.stream().mapToDouble(d -> d).max().orElse(1));
    double air = Math.max(most - least, 1e-9) * 0.05;
    low = least - air;
    high = most + air;
  }

  /** The whole file. */
  public static String of(HuntResult result) {
    return new HuntPlot(result).text();
  }

  private String text() {
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 ")
        .append(WIDTH + " " + HEIGHT + "\"><title>")
        .append(escaped("Margin of " + result.requirement() + " over evaluations"))
        .append("</title>")
        .append(STYLE);
    label(LEFT, 24, "start", result.requirement());
    axes();
    dots();
    least();
    return svg.append("</svg>\n").toString();
  }

  private void axes() {
    for (int i = 0; i <= TICKS; i++) {
      double value = low + (high - low) * i / TICKS;
      line("grid", LEFT, y(value), WIDTH - RIGHT, y(value));
      label(LEFT - 8, y(value) + 5, "end", rounded(value));
      int number = Math.round(result.evaluations().size() * (float) i / TICKS);
      label(x(number), HEIGHT - BOTTOM + 22, "middle", Integer.toString(number));
    }
    line("zero", LEFT, y(0), WIDTH - RIGHT, y(0));
    line("axis", LEFT, TOP, LEFT, HEIGHT - BOTTOM);
    line("axis", LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM);
    String unit = result.unit().isEmpty() ? "margin" : "margin, " + result.unit();
    label(LEFT, 42, "start", unit + "; below 0 the requirement fails");
    label((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 14, "middle", "evaluation");
  }

  private void dots() {
    for (Evaluation one : result.evaluations()) {
      double rank = one.reading().rank();
      if (one.reading().isVacuous()) {
        line("none", x(one.number()), HEIGHT - BOTTOM - 8, x(one.number()), HEIGHT - BOTTOM);
      } else if (Double.isFinite(rank)) {
        svg.append(
            String.format(
                Locale.ROOT,
                "<circle class=\"dot\" cx=\"%.1f\" cy=\"%.1f\" r=\"2.5\"/>",
                x(one.number()),
                y(rank)));
      }
    }
  }

  private void least() {
    StringBuilder points = new StringBuilder();
    double least = Double.POSITIVE_INFINITY;
    for (Evaluation one : result.evaluations()) {
      double rank = one.reading().rank();
      if (Double.isFinite(rank) && rank < least) {
        if (Double.isFinite(least)) {
          point(points, one.number(), least);
        }
        least = rank;
        point(points, one.number(), least);
      }
    }
    if (Double.isFinite(least)) {
      point(points, result.evaluations().size(), least);
      svg.append("<polyline class=\"least\" points=\"").append(points).append("\"/>");
    }
  }

  private void point(StringBuilder points, double number, double value) {
    points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(number), y(value)));
  }

  private void line(String kind, double x1, double y1, double x2, double y2) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<line class=\"%s\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>",
            kind,
            x1,
            y1,
            x2,
            y2));
  }

  private void label(double x, double y, String anchor, String text) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
            x,
            y,
            anchor,
            escaped(text)));
  }

  private double x(double number) {
    return LEFT + (WIDTH - LEFT - RIGHT) * number / Math.max(1, result.evaluations().size());
  }

  private double y(double value) {
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (value - low) / (high - low);
  }

  private static String rounded(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
