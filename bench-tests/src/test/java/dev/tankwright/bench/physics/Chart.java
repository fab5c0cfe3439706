package dev.tankwright.bench.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A plain line chart as SVG text. The same data give the same bytes: numbers are written with a
 * fixed count of decimals in no locale.
 */
final class Chart {
  private static final int WIDTH = 720;
  private static final int HEIGHT = 320;
  private static final int LEFT = 64;
  private static final int RIGHT = 16;
  private static final int TOP = 40;
  private static final int BOTTOM = 48;
  private static final int TICKS = 5;
  private static final int LEGEND_STEP = 165;
  private static final String[] COLOURS = {"#0b62a4", "#c2410c", "#15803d", "#7c3aed"};

  /** A named row of points, joined by a line or shown as rings. */
  private record Series(String name, boolean rings, List<Double> x, List<Double> y) {}

  private final String title;
  private final String xName;
  private final String yName;
  private final List<Series> series = new ArrayList<>();

  Chart(String title, String xName, String yName) {
    this.title = title;
    this.xName = xName;
    this.yName = yName;
  }

  /** Adds a line. */
  Chart line(String name, List<Double> x, List<Double> y) {
    series.add(new Series(name, false, x, y));
    return this;
  }

  /** Adds points, as of a table. */
  Chart points(String name, List<Double> x, List<Double> y) {
    series.add(new Series(name, true, x, y));
    return this;
  }

  /** The picture. */
  String svg() {
    Scale x = scale(true);
    Scale y = scale(false);
    StringBuilder out = new StringBuilder(4096);
    head(out);
    grid(out, x, y);
    for (int i = 0; i < series.size(); i++) {
      draw(out, series.get(i), COLOURS[i % COLOURS.length], x, y);
      legend(out, series.get(i), COLOURS[i % COLOURS.length], i);
    }
    return out.append("</svg>\n").toString();
  }

  private void head(StringBuilder out) {
    add(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " font-family=\"sans-serif\" font-size=\"12\" fill=\"#1f2937\">%n"
            + "<title>%s</title>%n<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>%n",
        WIDTH,
        HEIGHT,
        title,
        WIDTH,
        HEIGHT);
    text(out, LEFT, 16, "start", title);
    text(out, (LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 8, "middle", xName);
    add(
        out,
        "<text transform=\"translate(14 %d) rotate(-90)\" text-anchor=\"middle\">%s</text>%n",
        (TOP + HEIGHT - BOTTOM) / 2,
        yName);
  }

  private static void grid(StringBuilder out, Scale x, Scale y) {
    for (double at = y.low; at <= y.high + y.step / 2; at += y.step) {
      rule(out, LEFT, y.at(at), WIDTH - RIGHT, y.at(at));
      text(out, LEFT - 6, y.at(at) + 4, "end", y.label(at));
    }
    for (double at = x.low; at <= x.high + x.step / 2; at += x.step) {
      rule(out, x.at(at), TOP, x.at(at), HEIGHT - BOTTOM);
      text(out, x.at(at), HEIGHT - BOTTOM + 16, "middle", x.label(at));
    }
  }

  private static void draw(StringBuilder out, Series one, String colour, Scale x, Scale y) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < one.x.size(); i++) {
      double px = x.at(one.x.get(i));
      double py = y.at(one.y.get(i));
      if (one.rings) {
        add(
            out,
            "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"none\" stroke=\"%s\"/>%n",
            px,
            py,
            colour);
      } else {
        add(path, "%s%.1f %.1f", i == 0 ? "M" : " L", px, py);
      }
    }
    if (!one.rings) {
      String form = "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"/>%n";
      add(out, form, path, colour);
    }
  }

  private static void legend(StringBuilder out, Series one, String colour, int place) {
    double at = LEFT + place * (double) LEGEND_STEP;
    if (one.rings) {
      add(
          out,
          "<circle cx=\"%.1f\" cy=\"28\" r=\"4\" fill=\"none\" stroke=\"%s\"/>%n",
          at + 8,
          colour);
    } else {
      String form = "<path d=\"M%.1f 28 H%.1f\" stroke=\"%s\" stroke-width=\"2\"/>%n";
      add(out, form, at, at + 16, colour);
    }
    text(out, at + 20, 32, "start", one.name);
  }

  private static void rule(StringBuilder out, double x1, double y1, double x2, double y2) {
    String form = "<path d=\"M%.1f %.1f L%.1f %.1f\" stroke=\"#e5e7eb\"/>%n";
    add(out, form, x1, y1, x2, y2);
  }

  private static void text(StringBuilder out, double x, double y, String anchor, String words) {
    add(out, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y, anchor, words);
  }

  private static void add(StringBuilder out, String form, Object... values) {
    out.append(String.format(Locale.ROOT, form.replace("%n", "\n"), values));
  }

  private Scale scale(boolean ofX) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Series one : series) {
      for (double value : ofX ? one.x : one.y) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    return ofX
        ? new Scale(low, high, LEFT, WIDTH - RIGHT)
        : new Scale(low, high, HEIGHT - BOTTOM, TOP);
  }

  /** Maps values to places, between round ends. */
  private static final class Scale {
    private final double low;
    private final double high;
    private final double step;
    private final double from;
    private final double to;

    Scale(double least, double most, double from, double to) {
      double raw = Math.max(1e-9, most - least) / TICKS;
      double power = Math.pow(10, Math.floor(Math.log10(raw)));
      double lead = raw / power;
      step = power * (lead > 5 ? 10 : lead > 2 ? 5 : lead > 1 ? 2 : 1);
      low = Math.floor(least / step + 1e-9) * step;
      high = Math.ceil(most / step - 1e-9) * step;
      this.from = from;
      this.to = to;
    }

    double at(double value) {
      return from + (value - low) / (high - low) * (to - from);
    }

    String label(double value) {
      int decimals = (int) Math.max(0, -Math.floor(Math.log10(step)));
      return String.format(Locale.ROOT, "%." + decimals + "f", value + 0.0);
    }
  }
}
