package dev.tankwright.plant.facts;

import java.util.List;

/**
 * A temperature over time, sampled at equal distances from time 0.
 *
 * @param stepSeconds distance of the samples, s
 * @param celsius the samples, °C
 */
public record Curve(double stepSeconds, List<Double> celsius) {

  /** Keeps its own copy of the samples. */
  public Curve {
    celsius = List.copyOf(celsius);
  }

  /**
   * When a temperature is first reached, s, interpolated between samples; infinite when it is not
   * reached.
   */
  public double secondsTo(double wanted) {
    if (celsius.get(0) >= wanted) {
      return 0;
    }
    for (int i = 1; i < celsius.size(); i++) {
      double before = celsius.get(i - 1);
      if (celsius.get(i) >= wanted) {
        return (i - 1 + (wanted - before) / (celsius.get(i) - before)) * stepSeconds;
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
