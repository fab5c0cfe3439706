package dev.tankwright.report.exploration;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.explore.PinScan;
import dev.tankwright.explore.ShortTimes;
import dev.tankwright.explore.Violation;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.rule.Rule;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.file.ScenarioWriter;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.yaml.Place;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A broken rule as a scenario: what stood on the pins, scan by scan, is forced on them, so that a
 * run breaks the same rule in the same scan. One violation; one thread.
 */
public final class BrokenRuleScenario {
  private static final String HEAD =
      "# Written by an exploration. Times are shortened: a proof about logic only.\n";
  private static final String BACK_HEAD =
      "# The operator cannot return to STANDBY with all parts healthy. The fuse, which no pin"
          + " sees,\n"
          + "# breaks only to mark the moment for the requirement.\n";
  private static final int MILLIS = 1_000;
  private static final int LONGEST_NAME = 120;
  private static final int BACK_LIMIT_MILLIS = 500;
  private static final int SCANS_PER_SECOND = 100;

  private final Violation violation;
  private final Map<Pin, PinForce> before = new EnumMap<>(Pin.class);
  private final List<TimelineEntry> timeline = new ArrayList<>();
  private int commands;
  private long millis;

  private BrokenRuleScenario(Violation violation) {
    this.violation = violation;
  }

  /** Name of its file, the same for the same rule and set. */
  public static String fileName(Violation violation) {
    String faulty = violation.faulty().replace(" and ", "+");
    String rule = violation.rule().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return rule + "--" + faulty + ".yaml";
  }

  /**
   * Content of its file.
   *
   * @param profile the limits with the short times that were explored
   */
  public static String text(Violation violation, DeviceProfile profile) {
    String more = triesBack(violation) ? BACK_HEAD : "";
    return HEAD + more + ScenarioWriter.text(of(violation, profile), BuiltInBaths.USUAL);
  }

  /**
   * The scenario.
   *
   * @param profile the limits with the short times that were explored
   */
  public static Scenario of(Violation violation, DeviceProfile profile) {
    Rule rule = violation.rule();
    return new Scenario(
        fileName(violation),
        "",
        rule.name() + " is broken",
        "Shows the shortest way to a scan that violates this rule: " + rule.statement(),
        "bench-1",
        Instant.parse("2026-01-05T08:00:00Z"),
        1,
        MILLIS * seconds(violation),
        BuiltInBaths.usual(),
        new BathStart(4.5, 39, 21, 1),
        profile,
        new BrokenRuleScenario(violation).timeline(),
        List.of(requirement(rule)),
        Contents.UNSTATED);
  }

  private static boolean triesBack(Violation violation) {
    return violation.rule() == Rule.STANDBY_IN_REACH;
  }

  private static long seconds(Violation violation) {
    int off = violation.scans().stream().mapToInt(scan -> Math.max(0, scan.offSeconds())).sum();
    return 1L + off + violation.scans().size() / SCANS_PER_SECOND;
  }

  private static Requirement requirement(Rule rule) {
    String name = rule.statement();
    Requirement.Label label =
        new Requirement.Label(
            name.substring(0, Math.min(LONGEST_NAME, name.length())),
            rule.requirement(),
            Place.START);
    return rule == Rule.STANDBY_IN_REACH
        ? new Requirement.Within(
            label,
            BACK_LIMIT_MILLIS,
            new Condition.On(Signal.PART_BROKEN),
            new Condition.Is(Signal.PHASE, Phase.STANDBY.ordinal()))
        : new Requirement.Always(label, new Condition.Is(Signal.BROKEN_RULE, 0));
  }

  private List<TimelineEntry> timeline() {
    int back = triesBack(violation) ? violation.scans().size() - Violation.BACK_SCANS : -1;
    for (int scan = 0; scan < violation.scans().size(); scan++) {
      if (scan == back) {
        add(new Action.Break(PartFault.FUSE_STUCK));
      }
      PinScan now = violation.scans().get(scan);
      millis += now.isCut() ? cut(now) : force(now);
    }
    return timeline;
  }

  private void add(Action action) {
    timeline.add(new TimelineEntry(new When.At(millis), action, Place.START));
  }

  /** Forces what has changed, and tells how long the scan lasts, ms. */
  private int force(PinScan scan) {
    commands += scan.fresh() ? 1 : 0;
    List<PinForce> changed = new ArrayList<>();
    for (PinForce value : values(scan.pins())) {
      if (!value.equals(before.put(value.pin(), value))) {
        changed.add(value);
      }
    }
    if (!changed.isEmpty()) {
      add(new Action.Force(changed));
    }
    return ShortTimes.SCAN_MS;
  }

  /** Cuts the power, and tells for how long, ms. */
  private int cut(PinScan scan) {
    int off = scan.offSeconds() == 0 ? ShortTimes.SCAN_MS : MILLIS * scan.offSeconds();
    if (scan.damaged()) {
      add(new Action.Break(PartFault.MEMORY_DAMAGED));
    }
    add(new Action.CutPower(off));
    return off;
  }

  private List<PinForce> values(PinScan.Pins p) {
    return List.of(
        new PinForce(Pin.COUNTER, p.counter()),
        new PinForce(Pin.CONTROL_SENSOR, p.controlSensor()),
        new PinForce(Pin.CUT_OFF_SENSOR, p.cutOffSensor()),
        contact(Pin.LID_MAKE_CONTACT, p.lidMakeContact()),
        contact(Pin.LID_BREAK_CONTACT, p.lidBreakContact()),
        contact(Pin.MINIMUM_LEVEL, p.minimumLevel()),
        contact(Pin.FILL_MARK, p.fillMark()),
        contact(Pin.DRAIN_OPEN_END, p.drainOpenEnd()),
        contact(Pin.DRAIN_CLOSED_END, p.drainClosedEnd()),
        contact(Pin.HEATER_CURRENT, p.heaterCurrent()),
        contact(Pin.GENERATOR_RUNNING, p.generatorRunning()),
        contact(Pin.GENERATOR_FAULT, p.generatorFault()),
        contact(Pin.MAINS, p.mains()),
        word(Pin.COMMAND, p.command()),
        new PinForce(Pin.COMMAND_NUMBER, commands),
        new PinForce(
            Pin.RECIPE,
            0,
            p.command() == Command.START ? Optional.ofNullable(p.recipe()) : Optional.empty()),
        word(Pin.FOIL_VERDICT, p.verdict()));
  }

  private static PinForce contact(Pin pin, boolean on) {
    return new PinForce(pin, on ? 1 : 0);
  }

  private static PinForce word(Pin pin, Enum<?> constant) {
    return new PinForce(pin, constant == null ? PinForce.NONE : constant.ordinal());
  }
}
