package dev.tankwright.bench.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Points of one line. */
final class Curve {
  private final List<Double> x = new ArrayList<>();
  private final List<Double> y = new ArrayList<>();

  /** A function between two ends. */
  static Curve of(double from, double to, double step, DoubleUnaryOperator function) {
    Curve curve = new Curve();
    for (int i = 0; from + i * step <= to + step / 2; i++) {
      curve.add(from + i * step, function.applyAsDouble(from + i * step));
    }
    return curve;
  }

  void add(double atX, double atY) {
    x.add(atX);
    y.add(atY);
  }

  int size() {
    return x.size();
  }

  List<Double> x() {
    return x;
  }

  List<Double> y() {
    return y;
  }
}
