package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Every case of a campaign by its number: a pure function of the campaign, so that all machines
 * agree on it. Numbers run over faults, then phases, then scenarios, then moments, then settings of
 * the tolerances. Immutable and thread-safe.
 */
public final class Plan {
  /** Most cases of a campaign. */
  public static final int MOST_CASES = 10_000_000;

  private final Campaign campaign;
  private final List<Undisturbed> stays;
  private final List<Phase> phases;
  private final List<Slot> slots = new ArrayList<>();
  private final List<Required> required;
  private final int perSlot;

  /** One variation of the campaign and where its cases belong. */
  private record Slot(Variation variation, int base, List<Integer> positions) {}

  /**
   * Plans a campaign; runs each of its scenarios once, undisturbed.
   *
   * @throws PlanException when a phase is never entered, a requirement fails without any fault, or
   *     there are too many cases
   */
  public Plan(Campaign campaign) throws PlanException {
    this.campaign = campaign;
    stays = new ArrayList<>();
    for (int i = 0; i < campaign.bases().size(); i++) {
      Scenario base = campaign.bases().get(i);
      stays.add(Undisturbed.of(base.withRequirements(campaign.requirements(i))));
    }
    checkUndisturbed();
    phases = phases();
    required = required();
    perSlot = campaign.moments().count() * campaign.draws();
    for (Injection injection : campaign.injections()) {
      for (Phase phase : phases) {
        addSlots(injection, phase);
      }
    }
    if ((long) slots.size() * perSlot > MOST_CASES) {
      throw new PlanException(
          campaign.file()
              + ": this is "
              + (long) slots.size() * perSlot
              + " cases; the maximum is "
              + MOST_CASES
              + ", so use fewer moments or draws",
          false);
    }
  }

  private void checkUndisturbed() throws PlanException {
    for (int i = 0; i < stays.size(); i++) {
      for (Verdict verdict : stays.get(i).verdicts()) {
        if (verdict.outcome() == Verdict.Outcome.FAILED) {
          throw new PlanException(
              campaign.file()
                  + ": '"
                  + verdict.name()
                  + "' fails in "
                  + campaign.bases().get(i).file()
                  + " without any fault, so no case would be meaningful: "
                  + verdict.detail(),
              true);
        }
      }
    }
  }

  private List<Phase> phases() throws PlanException {
    List<Phase> entered =
        Arrays.stream(Phase.values())
            .filter(phase -> stays.stream().anyMatch(stay -> stay.of(phase).isPresent()))
            .toList();
    for (Phase phase : campaign.phases()) {
      if (!entered.contains(phase)) {
        throw new PlanException(
            campaign.file()
                + ": no scenario under 'base' enters "
                + phase
                + " without a fault; the phases they enter are "
                + entered,
            false);
      }
    }
    return campaign.phases().isEmpty() ? entered : campaign.phases();
  }

  private List<Required> required() {
    Map<String, Required> byName = new LinkedHashMap<>();
    for (int i = 0; i < stays.size(); i++) {
      for (Requirement requirement : campaign.requirements(i)) {
        byName.putIfAbsent(requirement.label().name(), Required.of(requirement));
      }
    }
    return List.copyOf(byName.values());
  }

  private void addSlots(Injection injection, Phase phase) {
    for (int i = 0; i < stays.size(); i++) {
      if (stays.get(i).of(phase).isPresent()) {
        List<Requirement> asked = campaign.requirements(i);
        List<Integer> positions = asked.stream().map(Required::of).map(this::position).toList();
        slots.add(new Slot(variation(injection, phase, i), i, positions));
      }
    }
  }

  private int position(Required one) {
    for (int i = 0; i < required.size(); i++) {
      if (required.get(i).name().equals(one.name())) {
        return i;
      }
    }
    throw new IllegalArgumentException("nothing is known of " + one.name());
  }

  private Variation variation(Injection injection, Phase phase, int base) {
    Map<Axis, Span> spans = new EnumMap<>(Axis.class);
    spans.putAll(campaign.tolerances());
    spans.put(Axis.MOMENT, Moments.whole(stays.get(base).of(phase).orElse(0)));
    return new Variation(
        campaign.bases().get(base), injection, phase, spans, campaign.requirements(base));
  }

  /** How many cases there are. */
  public int cases() {
    return slots.size() * perSlot;
  }

  /** The columns of the matrix. */
  public List<Phase> phaseColumns() {
    return phases;
  }

  /** How the scenarios go when nothing is injected, in their order. */
  public List<Undisturbed> undisturbed() {
    return List.copyOf(stays);
  }

  /** What results are told about the campaign. */
  public About about(String version, Shard shard) {
    return new About(
        campaign.title(),
        campaign.purpose(),
        campaign.file(),
        CampaignChecksum.of(campaign),
        version,
        campaign.bases().stream().map(base -> base.bath().name()).toList(),
        campaign.bases().stream().map(Scenario::file).toList(),
        campaign.injections().stream().map(Injection::name).toList(),
        phases,
        required,
        campaign.seed(),
        cases(),
        shard);
  }

  /** The variation that a case belongs to. */
  public Variation variation(int number) {
    return slots.get(number / perSlot).variation();
  }

  /** Moment, tolerances and seed of a case. */
  public Setting setting(int number) {
    Slot slot = slots.get(number / perSlot);
    int draw = number % campaign.draws();
    int moment = number % perSlot / campaign.draws();
    SplittableRandom random = new SplittableRandom(mixed(campaign.seed(), number));
    Variation variation = slot.variation();
    long stay = stays.get(slot.base()).of(variation.phase()).orElseThrow();
    double millis = campaign.moments().millis(moment, stay, random);
    Setting setting = Setting.nominal(variation.base()).with(Axis.MOMENT, millis);
    if (draw == 0) {
      return setting;
    }
    Map<Axis, Double> values = new EnumMap<>(setting.values());
    for (Axis axis : Axis.tolerances()) {
      values.put(axis, variation.spans().get(axis).at(random.nextDouble()));
    }
    return new Setting(values, random.nextLong(Scenario.HIGHEST_SEED + 1));
  }

  /** The scenario of a case. */
  public Scenario scenario(int number) {
    return variation(number).scenario(setting(number));
  }

  /** Runs a case. */
  public CaseResult run(int number) {
    Slot slot = slots.get(number / perSlot);
    CaseResult result = CaseRun.of(slot.variation(), number, slot.base(), setting(number));
    return slot.positions().size() == required.size() ? result : spread(result, slot.positions());
  }

  /** Another scenario's requirements were not asked of this case. */
  private CaseResult spread(CaseResult result, List<Integer> positions) {
    CaseVerdict[] findings = new CaseVerdict[required.size()];
    Arrays.fill(findings, CaseVerdict.of(Verdict.Outcome.NOT_EXERCISED));
    for (int i = 0; i < positions.size(); i++) {
      findings[positions.get(i)] = result.findings().get(i);
    }
    return result.with(List.of(findings));
  }

  /** A seed of its own for each case: neighbours must not draw alike. */
  private static long mixed(long seed, int number) {
    return new SplittableRandom(seed).nextLong() ^ (number * 0x9E3779B97F4A7C15L);
  }
}
