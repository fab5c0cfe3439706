package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.explore.FaultySet;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The sets that were proven, as the program has put them down, and what the page says of them. */
class ExploredSetsTest {
  private static final double MOST_BYTES = 50;
  private static final List<String> NUMBERS = List.of("none", "one", "two");

  private final Page section = Page.read("docs/exploration.md").section("What was explored");
  private final Map<String, FaultySet> plans =
      FaultySet.whole().stream().collect(Collectors.toMap(FaultySet::text, Function.identity()));
  private final List<CSVRecord> sets = sets();

  private static List<CSVRecord> sets() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader =
        Files.newBufferedReader(Page.root().resolve("docs/exploration-sets.csv"))) {
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException("docs/exploration-sets.csv cannot be read", e);
    }
  }

  @Test
  @DisplayName("every set stands once, all of one fingerprint, in less memory than was asked for")
  void ofOneController() {
    List<String> names = sets.stream().map(set -> set.get("set")).toList();
    assertEquals(names.stream().distinct().toList(), names);
    assertTrue(plans.keySet().containsAll(names), names.toString());
    assertEquals(1, sets.stream().map(set -> set.get("fingerprint")).distinct().count());
    for (CSVRecord set : sets) {
      assertTrue(bytes(Stream.of(set)) < MOST_BYTES, set.toString());
    }
  }

  @Test
  @DisplayName("the page's sums are those of the sets, and it names every set that is missing")
  void sums() {
    List<List<String>> wanted =
        Stream.concat(
                Stream.of(0, 1, 2).map(parts -> row(NUMBERS.get(parts), parts)),
                Stream.of(row("together", -1)))
            .toList();
    assertEquals(wanted, section.rows());
    List<String> proven = sets.stream().map(set -> set.get("set")).toList();
    for (String name : plans.keySet()) {
      boolean named = section.text().contains("`" + name + "`");
      assertEquals(!proven.contains(name), named, name + " is missing, or is named as missing");
    }
  }

  private List<String> row(String name, int parts) {
    List<CSVRecord> these =
        sets.stream().filter(set -> isOf(plans.get(set.get("set")), parts)).toList();
    long all = plans.values().stream().filter(plan -> isOf(plan, parts)).count();
    return List.of(
        name,
        these.size() + " of " + all,
        grouped(sum(these.stream(), "states")),
        grouped(sum(these.stream(), "transitions")),
        Long.toString(these.stream().mapToLong(set -> number(set, "depth")).max().orElse(0)),
        String.format(Locale.ROOT, "%.1f", bytes(these.stream())));
  }

  private static boolean isOf(FaultySet plan, int parts) {
    return parts < 0 || plan.faulty().size() == parts;
  }

  private static double bytes(Stream<CSVRecord> sets) {
    List<CSVRecord> these = sets.toList();
    return (double) sum(these.stream(), "bytes") / sum(these.stream(), "states");
  }

  private static long sum(Stream<CSVRecord> sets, String column) {
    return sets.mapToLong(set -> number(set, column)).sum();
  }

  private static long number(CSVRecord set, String column) {
    return Long.parseLong(set.get(column));
  }

  private static String grouped(long number) {
    return String.format(Locale.ROOT, "%,d", number).replace(',', ' ');
  }
}
