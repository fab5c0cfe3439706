package dev.tankwright.hunt;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Every run of a search as comma-separated values (RFC 4180): number, space, outcome, margin, unit,
 * the least margin so far, and a column for each coordinate of any space. What is not known, or
 * does not belong to the row's space, is empty.
 */
public final class HuntCsv {
  private HuntCsv() {}

  /** The whole file. */
  public static String of(HuntResult result) {
    Map<Coordinate, Integer> columns = new LinkedHashMap<>();
    for (Evaluation one : result.evaluations()) {
      one.space().coordinates().forEach(c -> columns.putIfAbsent(c, columns.size()));
    }
    StringBuilder text = new StringBuilder(1 << 14);
    try {
      CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180);
      csv.printRecord(headings(columns));
      double least = Double.POSITIVE_INFINITY;
      for (Evaluation one : result.evaluations()) {
        least = Math.min(least, one.reading().rank());
        csv.printRecord(row(one, least, columns));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("A text in memory cannot be written", e);
    }
    return text.toString();
  }

  private static List<String> headings(Map<Coordinate, Integer> columns) {
    List<String> headings =
        new ArrayList<>(
            List.of("evaluation", "space", "outcome", "margin", "unit", "least-margin"));
    columns.keySet().forEach(c -> headings.add(head(c)));
    return headings;
  }

  private static String head(Coordinate coordinate) {
    return coordinate.unit().isEmpty()
        ? coordinate.name()
        : coordinate.name() + " [" + coordinate.unit() + "]";
  }

  private static List<String> row(Evaluation one, double least, Map<Coordinate, Integer> columns) {
    String[] cells = new String[columns.size()];
    Arrays.fill(cells, "");
    List<Coordinate> own = one.space().coordinates();
    List<Double> values = one.space().values(one.point());
    for (int i = 0; i < own.size(); i++) {
      cells[columns.get(own.get(i))] = number(values.get(i));
    }
    List<String> row = new ArrayList<>();
    row.add(Integer.toString(one.number()));
    row.add(one.space().name());
    row.add(one.reading().outcome().name());
    row.add(one.reading().margin().isPresent() ? number(one.reading().rank()) : "");
    row.add(one.reading().unit());
    row.add(number(least));
    row.addAll(List.of(cells));
    return row;
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
