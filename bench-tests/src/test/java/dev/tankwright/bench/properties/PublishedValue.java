package dev.tankwright.bench.properties;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * One value of ours beside a published one.
 *
 * @param property what is compared, with the unit of both values
 * @param point where, with its units
 * @param ours our value
 * @param published the published value as it is printed
 * @param tolerance largest difference that still agrees
 * @param source where the published value comes from, and how it got here
 */
record PublishedValue(
    String property, String point, double ours, String published, double tolerance, String source) {

  // The limit itself may be missed by the rounding of binary fractions, and by no more.
  private static final double BINARY_ROUNDING = 1 + 1e-9;

  /** Ours has to round to what is printed: half a unit of its last digit. */
  static PublishedValue printed(
      String property, String point, double ours, String published, String source) {
    double unit = Math.pow(10, -new BigDecimal(published).scale());
    return new PublishedValue(property, point, ours, published, unit / 2, source);
  }

  /** Ours has to lie within a share of the published value, for sources that scatter. */
  static PublishedValue within(
      String property, String point, double ours, String published, double share, String source) {
    double tolerance = share * Math.abs(Double.parseDouble(published));
    return new PublishedValue(property, point, ours, published, tolerance, source);
  }

  double publishedNumber() {
    return Double.parseDouble(published);
  }

  double difference() {
    return ours - publishedNumber();
  }

  /** False for NaN. */
  boolean agrees() {
    return Math.abs(difference()) <= tolerance * BINARY_ROUNDING;
  }

  String line() {
    return String.format(
        Locale.ROOT,
        "%-38s %-34s %18.9g %16s %10.2g %10.2g %-4s %s",
        property,
        point,
        ours,
        published,
        difference(),
        tolerance,
        agrees() ? "ok" : "NO",
        source);
  }

  static String heading() {
    return String.format(
        Locale.ROOT,
        "%-38s %-34s %18s %16s %10s %10s %-4s %s",
        "property",
        "point",
        "ours",
        "published",
        "difference",
        "tolerance",
        "",
        "source");
  }

  String csv() {
    return String.join(
        ",",
        quoted(property),
        quoted(point),
        Double.toString(ours),
        published,
        Double.toString(tolerance),
        Boolean.toString(agrees()),
        quoted(source));
  }

  static String csvHeading() {
    return "property,point,ours,published,tolerance,agrees,source";
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  @Override
  public String toString() {
    return property + " at " + point + ": " + published + " (" + source + ")";
  }
}
