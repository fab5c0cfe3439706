package dev.tankwright.report;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.Mark;
import dev.tankwright.scenario.run.PhaseSpan;
import dev.tankwright.scenario.run.RunResult;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A made-up run of forty minutes: heating, degassing, cleaning, a lid opened, an end in lockout.
 */
public final class SampleRun {
  public static final String SCRIPT = "</script><script>alert(1)</script><!-- \u2028 & \"it's\"";
  public static final int END = 2_400_000;

  private static final int HEATED = 900_000;
  private static final int DEGASSED = 1_200_000;
  private static final int LID_OPENED = 1_500_000;
  private static final int RESUMED = 1_560_000;
  private static final int LOCKED = 2_100_000;

  private SampleRun() {}

  public static RunResult of() {
    return titled("First cycle of the morning");
  }

  public static RunResult titled(String title) {
    return new RunResult(
        about(title), profile(), verdicts(), phases(), marks(), trace(500), record());
  }

  public static RunResult with(List<Verdict> verdicts) {
    return new RunResult(
        about("One by one"), profile(), verdicts, phases(), marks(), trace(5_000), "");
  }

  public static RunResult.About about(String title) {
    return new RunResult.About(
        "first-cycle.v2.yaml",
        title,
        "The bath heats, degasses and cleans, and stands still while its lid is open.",
        "instrument-room-1",
        7,
        END,
        "2026-03-02T07:30:00Z",
        "0.1.0",
        "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");
  }

  public static EventsSeen events() {
    return new EventsSeen(true, "tcp://127.0.0.1:1883", 12, 11, List.of("bench-1/12"), 2, "");
  }

  private static DeviceProfile profile() {
    return DeviceProfile.sixLitre().with(Parameter.CUT_OFF_LIMIT, 68_000);
  }

  public static List<Verdict> verdicts() {
    return List.of(
        verdict("The solution stays below the cut-off", "SR-03", Verdict.Outcome.HELD, 27.4, "K"),
        verdict("Opening silences the bath", "SR-01", Verdict.Outcome.HELD, 0.01, "s"),
        verdict("The cycle completes", "", Verdict.Outcome.FAILED, Double.NEGATIVE_INFINITY, "s"),
        new Verdict(
            "A welded relay is found",
            "SR-07",
            "within: 1 s, after: heater-relay-welded, holds: not cut-off-relay",
            Verdict.Outcome.NOT_EXERCISED,
            OptionalLong.empty(),
            OptionalDouble.empty(),
            "",
            "The relay never welded."));
  }

  public static Verdict verdict(
      String name, String id, Verdict.Outcome outcome, double margin, String unit) {
    return new Verdict(
        name,
        id,
        "always: liquid-temperature < 68 \u00B0C",
        outcome,
        OptionalLong.of(2_292_120),
        OptionalDouble.of(margin),
        unit,
        "The solution reached 40.6 \u00B0C.");
  }

  private static List<PhaseSpan> phases() {
    return List.of(
        span(Phase.STANDBY, 0, 10_000, 19),
        span(Phase.HEATING, 10_000, HEATED, 40),
        span(Phase.DEGASSING, HEATED, DEGASSED, 40.2),
        span(Phase.CLEANING, DEGASSED, LID_OPENED, 40.6),
        span(Phase.PAUSED, LID_OPENED, RESUMED, 40.1),
        span(Phase.CLEANING, RESUMED, LOCKED, 40.3),
        span(Phase.LOCKOUT, LOCKED, END, 38.5));
  }

  private static PhaseSpan span(Phase phase, int from, int to, double celsius) {
    return new PhaseSpan(phase, from, to - from, celsius);
  }

  private static List<Mark> marks() {
    return List.of(
        new Mark(10_000, Mark.Kind.ACTION, "START, programme MEDIUM"),
        new Mark(10_010, Mark.Kind.EVENT, "cycle started"),
        new Mark(LID_OPENED, Mark.Kind.ACTION, "lid opened"),
        new Mark(RESUMED, Mark.Kind.ACTION, "RESUME"),
        new Mark(LOCKED, Mark.Kind.FAULT, "CONTROL_SENSOR_OPEN " + SCRIPT));
  }

  /** The trace, with one row per so many ms. */
  public static Trace trace(int everyMillis) {
    Trace trace = new Trace();
    for (int millis = 0; millis <= END; millis += everyMillis) {
      int now = millis;
      trace.sample(now, signal -> value(signal, now));
    }
    return trace;
  }

  static double value(Signal signal, int now) {
    boolean sounding = sounding(now);
    return switch (signal) {
      case LIQUID_TEMPERATURE -> liquid(now);
      case MEASURED_TEMPERATURE -> now >= LOCKED ? Double.NaN : liquid(now - 4_000);
      case WALL_TEMPERATURE -> liquid(now) + (heating(now) ? 6 : 0.4);
      case SETPOINT -> now >= 10_000 && now < LOCKED ? 40 : 0;
      case VOLUME -> 4.5 - now * 2e-8;
      case DISSOLVED_GAS -> now < HEATED ? 1 : Math.max(0.45, 1 - (now - HEATED) / 500_000.0);
      case ACTIVITY -> sounding ? 0.7 + 0.02 * Math.sin(now / 7_000.0) : 0;
      case ULTRASOUND, DRIVE_LEVEL -> sounding ? 1 : 0;
      case HEATER -> heating(now) ? 1 : 0;
      case CUT_OFF_RELAY -> now < LOCKED ? 1 : 0;
      case LID_OPEN -> now >= LID_OPENED && now < RESUMED ? 1 : 0;
      case DEGAS_OWED -> now < DEGASSED ? 1 : 0;
      case PHASE -> phase(now).ordinal();
      case FAULT -> now < LOCKED ? 0 : 1 + Fault.CONTROL_SENSOR_OPEN.ordinal();
      default -> 0;
    };
  }

  private static double liquid(int now) {
    double reached = 19 + 21 * Math.min(1, Math.max(0, now - 10_000) / (double) (HEATED - 10_000));
    return reached + (now > HEATED ? 0.3 * Math.sin((now - HEATED) / 40_000.0) : 0);
  }

  private static boolean heating(int now) {
    return now >= 10_000 && (now < HEATED || (now < LOCKED && now / 60_000 % 2 == 0));
  }

  private static boolean sounding(int now) {
    Phase phase = phase(now);
    return phase == Phase.CLEANING || (phase == Phase.DEGASSING && now % 10_000 < 6_000);
  }

  static Phase phase(int now) {
    Phase phase = Phase.STANDBY;
    for (PhaseSpan span : phases()) {
      phase = span.enteredMillis() <= now ? span.phase() : phase;
    }
    return phase;
  }

  public static String record() {
    return "{\"programme\":\"MEDIUM\",\"setpointCelsius\":40.0,\"interruptions\":[{\"atSeconds\":1500,"
               + "\"reason\":\"LID_OPEN\"}],\"faults\":[],\"completed\":false,\"foil\":null,"
               + "\"note\":\"<b>&amp;\"}";
  }
}
