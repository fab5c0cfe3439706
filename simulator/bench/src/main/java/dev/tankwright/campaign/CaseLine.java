package dev.tankwright.campaign;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** One case as a line of a result file; doubles as Java prints them, so that none is rounded. */
final class CaseLine {
  static final String KEY = "case";

  private static final String NONE = "-";
  private static final int FIXED = 10;

  private CaseLine() {}

  static List<String> fields(CaseResult result, About about) {
    List<String> fields = new ArrayList<>();
    fields.add(KEY);
    fields.add(Integer.toString(result.number()));
    fields.add(Integer.toString(about.faults().indexOf(result.cell().fault())));
    fields.add(result.cell().phase().name());
    fields.add(Integer.toString(result.base()));
    fields.add(Long.toString(result.setting().seed()));
    fields.add(number(result.onsetMillis()));
    fields.add(result.detected().map(Fault::name).orElse(NONE));
    fields.add(number(result.reactionMillis()));
    fields.add(result.ended().map(Phase::name).orElse(NONE));
    for (Axis axis : Axis.values()) {
      fields.add(Double.toString(result.setting().value(axis)));
    }
    for (CaseVerdict finding : result.findings()) {
      fields.add(finding(finding));
    }
    return fields;
  }

  private static String number(OptionalLong value) {
    return value.isPresent() ? Long.toString(value.getAsLong()) : NONE;
  }

  private static String finding(CaseVerdict finding) {
    String outcome = finding.outcome().name().substring(0, 1);
    return finding.margin().isEmpty()
        ? outcome
        : outcome + finding.margin().getAsDouble() + " " + finding.unit();
  }

  /**
   * The case of a line.
   *
   * @throws IllegalArgumentException when the line fits its checksum and yet is none
   */
  static CaseResult of(List<String> fields, About about) {
    int axes = Axis.values().length;
    if (fields.size() != FIXED + axes + about.requirements().size()) {
      throw new IllegalArgumentException("a case has " + fields.size() + " fields");
    }
    Map<Axis, Double> values = new EnumMap<>(Axis.class);
    for (Axis axis : Axis.values()) {
      values.put(axis, Double.parseDouble(fields.get(FIXED + axis.ordinal())));
    }
    List<CaseVerdict> findings = new ArrayList<>();
    fields.subList(FIXED + axes, fields.size()).forEach(text -> findings.add(finding(text)));
    String fault = about.faults().get(Integer.parseInt(fields.get(2)));
    return new CaseResult(
        Integer.parseInt(fields.get(1)),
        new Cell(fault, Phase.valueOf(fields.get(3))),
        Integer.parseInt(fields.get(4)),
        new Setting(values, Long.parseLong(fields.get(5))),
        number(fields.get(6)),
        word(fields.get(7)).map(Fault::valueOf),
        number(fields.get(8)),
        word(fields.get(9)).map(Phase::valueOf),
        findings);
  }

  private static OptionalLong number(String text) {
    return text.equals(NONE) ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(text));
  }

  private static Optional<String> word(String text) {
    return text.equals(NONE) ? Optional.empty() : Optional.of(text);
  }

  private static CaseVerdict finding(String text) {
    Verdict.Outcome outcome =
        switch (text.charAt(0)) {
          case 'H' -> Verdict.Outcome.HELD;
          case 'F' -> Verdict.Outcome.FAILED;
          case 'N' -> Verdict.Outcome.NOT_EXERCISED;
          default -> throw new IllegalArgumentException("no outcome is " + text);
        };
    if (text.length() == 1) {
      return CaseVerdict.of(outcome);
    }
    int space = text.indexOf(' ');
    double margin = Double.parseDouble(text.substring(1, space));
    return new CaseVerdict(outcome, OptionalDouble.of(margin), text.substring(space + 1));
  }
}
