package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.profile.ProfileText;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One scenario with one injection in one phase, over the moments and tolerances that are allowed: a
 * pure function from a setting, or from a vector of shares, to the scenario of that case.
 * Immutable.
 *
 * @param base the scenario; the injection is put at the end of its timeline, waits for no other
 *     entry, and is not waited for
 * @param injection what is done to it
 * @param phase the phase in which it is done, the first time that it is entered
 * @param spans the range of every axis
 * @param requirements what is required of every case
 */
public record Variation(
    Scenario base,
    Injection injection,
    Phase phase,
    Map<Axis, Span> spans,
    List<Requirement> requirements) {

  private static final double DIGITS = 1e6;

  /** Keeps its own copies; an axis without a span stands at its nominal value. */
  public Variation {
    base = base.withBath(ProfileText.asRead(base.bath()));
    Setting nominal = Setting.nominal(base);
    Map<Axis, Span> own = new EnumMap<>(Axis.class);
    for (Axis axis : Axis.values()) {
      Span span = spans.get(axis);
      own.put(axis, span == null ? Span.of(nominal.value(axis)) : span);
    }
    spans = Collections.unmodifiableMap(own);
    requirements = List.copyOf(requirements);
  }

  /** The cell of the matrix that it fills. */
  public Cell cell() {
    return new Cell(injection.name(), phase);
  }

  /** The axes on which there is more than one value: the dimensions for a search. */
  public List<Axis> free() {
    return spans.entrySet().stream()
        .filter(entry -> !entry.getValue().isPoint())
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * The setting at a point of the unit cube.
   *
   * @param shares one number for each axis of {@link #free()}, 0–1 from the lower to the upper end;
   *     what lies outside is taken for the nearer end
   * @param seed seed of all chance in the run
   * @throws IllegalArgumentException when there are not as many numbers as free axes
   */
  public Setting at(double[] shares, long seed) {
    List<Axis> free = free();
    if (shares.length != free.size()) {
      throw new IllegalArgumentException(
          "there are " + free.size() + " free axes, not " + shares.length);
    }
    Map<Axis, Double> values = new EnumMap<>(Axis.class);
    spans.forEach((axis, span) -> values.put(axis, span.low()));
    for (int i = 0; i < shares.length; i++) {
      values.put(free.get(i), spans.get(free.get(i)).at(shares[i]));
    }
    return new Setting(values, seed);
  }

  /** The scenario of one case. */
  public Scenario scenario(Setting setting) {
    return base.withSeed(setting.seed())
        .withBath(bath(setting))
        .withStart(start(setting))
        .withTimeline(timeline(setting.delayMillis()))
        .withRequirements(requirements);
  }

  private List<TimelineEntry> timeline(long delayMillis) {
    List<TimelineEntry> entries = new ArrayList<>(base.timeline().size() + 1);
    entries.addAll(base.timeline());
    entries.add(
        new TimelineEntry(
            "",
            TimelineEntry.START,
            new When.On(phase, delayMillis),
            Optional.empty(),
            injection.action(),
            Place.START));
    return entries;
  }

  private BathProfile bath(Setting setting) {
    return base.bath()
        .withHeater(fileable(base.bath().powers().heaterWatts() * setting.value(Axis.HEATER)))
        .with(
            new BathProfile.Deviations(
                setting.value(Axis.MAINS),
                setting.value(Axis.CONTROL_SENSOR),
                setting.value(Axis.CUT_OFF_SENSOR),
                (int) setting.value(Axis.RELAY_DELAY)));
  }

  /** To as many digits as a file can hold. */
  private static double fileable(double value) {
    return Math.rint(value * DIGITS) / DIGITS;
  }

  private BathStart start(Setting setting) {
    BathStart start = base.start();
    double litres = fileable(start.litres() * setting.value(Axis.FILL));
    return new BathStart(
        Math.min(litres, base.bath().levels().brimLitres()),
        start.celsius(),
        setting.value(Axis.AMBIENT),
        start.gasSaturation(),
        start.humidity(),
        start.detergent(),
        start.load());
  }
}
