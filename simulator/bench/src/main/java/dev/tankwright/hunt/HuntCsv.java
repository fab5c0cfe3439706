package dev.tankwright.hunt;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/**
 * Every run of a search as comma-separated values (RFC 4180): number, space, outcome, margin, unit,
 * the least margin so far, and a column for each coordinate of any space. What is not known, or
 * does not belong to the row's space, is empty.
 */
public final class HuntCsv {
  private static final String END = "\r\n";

  private HuntCsv() {}

  /** The whole file. */
  public static String of(HuntResult result) {
    Map<Coordinate, Integer> columns = new LinkedHashMap<>();
    for (Evaluation one : result.evaluations()) {
      one.space().coordinates().forEach(c -> columns.putIfAbsent(c, columns.size()));
    }
    StringBuilder text = new StringBuilder("evaluation,space,outcome,margin,unit,least-margin");
    columns.keySet().forEach(c -> text.append(',').append(quoted(head(c))));
    text.append(END);
    double least = Double.POSITIVE_INFINITY;
    for (Evaluation one : result.evaluations()) {
      least = Math.min(least, one.reading().rank());
      text.append(row(one, least, columns)).append(END);
    }
    return text.toString();
  }

  private static String head(Coordinate coordinate) {
    return coordinate.unit().isEmpty()
        ? coordinate.name()
        : coordinate.name() + " [" + coordinate.unit() + "]";
  }

  private static String row(Evaluation one, double least, Map<Coordinate, Integer> columns) {
    StringJoiner row = new StringJoiner(",");
    row.add(Integer.toString(one.number())).add(quoted(one.space().name()));
    row.add(one.reading().outcome().name());
    row.add(one.reading().margin().isPresent() ? number(one.reading().rank()) : "");
    row.add(one.reading().unit()).add(number(least));
    String[] cells = new String[columns.size()];
    Arrays.fill(cells, "");
    List<Coordinate> own = one.space().coordinates();
    List<Double> values = one.space().values(one.point());
    for (int i = 0; i < own.size(); i++) {
      cells[columns.get(own.get(i))] = number(values.get(i));
    }
    for (String cell : cells) {
      row.add(cell);
    }
    return row.toString();
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  private static String quoted(String text) {
    return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
