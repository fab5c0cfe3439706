package dev.tankwright.report;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CaseVerdict;
import dev.tankwright.campaign.Cell;
import dev.tankwright.campaign.Required;
import dev.tankwright.campaign.Setting;
import dev.tankwright.campaign.Shard;
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

/**
 * A made-up campaign: every fault but the first two is detected after 100 ms and holds by 5 K; the
 * first fails in HEATING, the second never gets its phase CLEANING. One requirement is vacuous.
 */
public final class SampleCampaign {
  static final List<Phase> PHASES = List.of(Phase.HEATING, Phase.CLEANING, Phase.DRAINING);
  static final List<Required> REQUIRED =
      List.of(
          new Required("It stays cool", "SR-03", "always liquid-temperature < 70 °C"),
          new Required("It answers", "SR-01", "within 100 ms after lid-open: not ultrasound"),
          new Required("Never asked", "", "within 1 s after phase = LOCKOUT: buzzer"));

  private SampleCampaign() {}

  public static CampaignResult of(int faults, int casesPerCell) {
    return of(faults, casesPerCell, "");
  }

  /** The faults' names end as given. */
  public static CampaignResult of(int faults, int casesPerCell, String ending) {
    List<String> names = new ArrayList<>();
    List<CaseResult> cases = new ArrayList<>();
    for (int fault = 0; fault < faults; fault++) {
      names.add("fault-" + fault + ending);
      for (Phase phase : PHASES) {
        for (int i = 0; i < casesPerCell; i++) {
          cases.add(one(cases.size(), new Cell(names.get(fault), phase), fault, i));
        }
      }
    }
    return CampaignResult.of(about(names, cases.size(), Shard.WHOLE), cases);
  }

  static About about(List<String> faults, int cases, Shard shard) {
    return new About(
        "Made up",
        "Shows what a page makes of a campaign.",
        "made-up.yaml",
        "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
        "0.1.0",
        List.of("bench-6l"),
        List.of("short-cycle.yaml"),
        faults,
        PHASES,
        REQUIRED,
        7,
        cases,
        shard);
  }

  private static CaseResult one(int number, Cell cell, int fault, int i) {
    boolean reached = fault != 1 || cell.phase() != Phase.CLEANING;
    boolean fails = fault == 0 && cell.phase() == Phase.HEATING && i == 0;
    return new CaseResult(
        number,
        cell,
        0,
        setting(),
        reached ? OptionalLong.of(60_000) : OptionalLong.empty(),
        reached ? Optional.of(Fault.CONTROL_SENSOR_OPEN) : Optional.empty(),
        reached ? OptionalLong.of(100) : OptionalLong.empty(),
        Optional.of(Phase.LOCKOUT),
        List.of(
            finding(reached, fails ? -2 : 5, "K"),
            finding(reached, 80, "ms"),
            new CaseVerdict(Verdict.Outcome.NOT_EXERCISED, OptionalDouble.empty(), "")));
  }

  private static CaseVerdict finding(boolean reached, double margin, String unit) {
    if (!reached) {
      return new CaseVerdict(Verdict.Outcome.NOT_EXERCISED, OptionalDouble.empty(), "");
    }
    return new CaseVerdict(
        margin < 0 ? Verdict.Outcome.FAILED : Verdict.Outcome.HELD,
        OptionalDouble.of(margin),
        unit);
  }

  private static Setting setting() {
    Map<Axis, Double> values = new EnumMap<>(Axis.class);
    for (Axis axis : Axis.values()) {
      values.put(axis, 1.0);
    }
    return new Setting(values, 3);
  }
}
