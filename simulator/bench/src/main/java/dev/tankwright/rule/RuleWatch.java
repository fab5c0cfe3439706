package dev.tankwright.rule;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;

/**
 * Watches scan after scan and tells which rule is broken. It hears the notices of a scan, then
 * looks at pins and outputs. What it remembers between scans can be captured and restored like the
 * controller's own state. Allocates nothing after construction. Not thread-safe.
 */
public final class RuleWatch implements NoticeRing.Taker {
  private static final int WET = -1;

  private final ActuatorRules actuators;
  private final PinCauses pinCauses;
  private final PowerRules power;
  private final int scanMaximumMs;
  private final int dryTimeMs;
  private final int cutOffTimeMs;
  private final int hotFromCounts;
  private final ScanMoment moment = new ScanMoment();

  private Phase phase = Phase.SELF_TEST;
  private boolean pulse;
  private int dryMs = WET;
  private int hotMs = WET;
  private int latched;
  private int remainingMs;

  // Of this scan only, from its notices.
  private int toldPhase = Phase.SELF_TEST.ordinal();
  private boolean started;
  private Rule heard;

  /**
   * Makes a watch for a controller that has just been powered up.
   *
   * @param profile the device's limits
   */
  public RuleWatch(DeviceProfile profile) {
    actuators = new ActuatorRules(profile);
    power = new PowerRules(profile);
    pinCauses = new PinCauses(profile);
    scanMaximumMs = profile.get(Parameter.SCAN_MAXIMUM);
    dryTimeMs = profile.get(Parameter.DRY_TIME);
    cutOffTimeMs = profile.get(Parameter.CUT_OFF_TIME);
    hotFromCounts = new PinLimits(profile).countsFrom(profile.get(Parameter.CUT_OFF_LIMIT));
  }

  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    switch (kind) {
      case PHASE_CHANGED -> phaseTold(first, second);
      case FAULT_RAISED -> faultTold(Fault.of(first).bit(), 0);
      case FAULT_CLEARED -> faultTold(Fault.of(first).bit(), -1);
      case CYCLE_STARTED -> started = true;
      case NOTICES_LOST -> heard = Rule.NO_NOTICE_LOST;
      default -> {}
    }
  }

  private void phaseTold(int from, int to) {
    if (from != toldPhase || !PhaseRules.isLine(from, to)) {
      heard = Rule.PHASES_BY_TABLE;
    }
    toldPhase = to;
  }

  private void faultTold(int bit, int expected) {
    if ((latched & bit) != (bit & expected)) {
      heard = Rule.FAULTS_TOLD_ONCE;
    }
    latched ^= bit;
  }

  /**
   * Judges a scan after its notices were heard.
   *
   * @param in what stood on the pins
   * @param stepMs how far the counter moved since the scan before, ms; 0 for the first scan
   * @param news whether a command is new in this scan
   * @param out what the scan drives
   * @return the first rule that is broken, or {@code null}
   */
  public Rule check(Inputs in, int stepMs, boolean news, Outputs out) {
    int latchedBefore = moment.latched;
    ScanMoment m = begin(in, stepMs, news, out);
    Rule broken = heard;
    if (broken == null) {
      broken = actuators.broken(m);
    }
    if (broken == null) {
      broken = FaultRules.broken(latched, out);
    }
    if (broken == null) {
      broken = phases(m, latchedBefore);
    }
    if (broken == null) {
      broken = bookkeeping(out);
    }
    remember(out);
    return broken;
  }

  private Rule phases(ScanMoment m, int latchedBefore) {
    if (started) {
      power.cycleStarted();
    }
    Rule broken = m.out.panel.phase == phase ? null : power.broken(m);
    if (broken != null || m.out.panel.phase == phase) {
      return broken;
    }
    boolean leaves = phase == Phase.LOCKOUT;
    boolean barred =
        leaves
            && ((latchedBefore & FaultRules.SERVICE) != 0
                || pinCauses.present(latchedBefore, m.in) != 0);
    return PhaseRules.broken(m, barred);
  }

  /**
   * Another controller takes over after a loss of power.
   *
   * @param recalled whether it knows what the one before it knew; if not, all faults count as told
   *     anew
   * @param ageMs how old what it knows can be, ms: it has not been told what the one before it did
   *     in that time, and may do it again
   */
  public void powerUp(boolean recalled, int ageMs) {
    power.powerUp(recalled, phase);
    latched = recalled ? latched : 0;
    remainingMs = recalled && remainingMs > 0 ? remainingMs + ageMs : 0;
    moment.latched = latched;
    phase = Phase.SELF_TEST;
    toldPhase = phase.ordinal();
    pulse = false;
    dryMs = WET;
    hotMs = WET;
    started = false;
    heard = null;
  }

  private ScanMoment begin(Inputs in, int stepMs, boolean news, Outputs out) {
    int dtMs = stepMs < 0 || stepMs > scanMaximumMs ? scanMaximumMs : stepMs;
    dryMs = lasted(!in.minimumLevelWet(), dryMs, dtMs, dryTimeMs);
    boolean hot =
        in.cutOffSensorCounts >= hotFromCounts && PinLimits.isBelievable(in.cutOffSensorCounts);
    hotMs = lasted(hot, hotMs, dtMs, cutOffTimeMs);
    ScanMoment m = moment;
    m.in = in;
    m.out = out;
    m.before = phase;
    m.command = news && in.command != null ? in.command : Command.NONE;
    m.latched = latched;
    m.dry = dryMs >= dryTimeMs;
    m.hot = hotMs >= cutOffTimeMs;
    return m;
  }

  private static int lasted(boolean condition, int soFarMs, int dtMs, int limitMs) {
    if (!condition) {
      return WET;
    }
    return soFarMs == WET ? 0 : Math.min(limitMs, soFarMs + dtMs);
  }

  private Rule bookkeeping(Outputs out) {
    if (toldPhase != out.panel.phase.ordinal()) {
      return Rule.PHASES_BY_TABLE;
    }
    int left = out.panel.remainingMs;
    // Degassing that has become required is put in where heating ends, and nowhere else.
    boolean putIn = phase == Phase.HEATING && out.panel.phase == Phase.DEGASSING;
    boolean grew = !started && left > remainingMs && !putIn;
    if (grew || (left != 0 && !out.panel.phase.isInCycle() && !power.isHeld(out.panel.phase))) {
      return Rule.TIME_LEFT_FALLS;
    }
    return out.watchdogPulse == pulse ? Rule.WATCHDOG_PULSES : null;
  }

  private void remember(Outputs out) {
    phase = out.panel.phase;
    toldPhase = phase.ordinal();
    pulse = out.watchdogPulse;
    remainingMs = out.panel.remainingMs;
    started = false;
    heard = null;
  }

  /** Phase after the last scan. */
  public Phase phase() {
    return phase;
  }

  /** How many faults that stop are announced and not cleared. */
  public int stoppingFaults() {
    return Integer.bitCount(latched & FaultRules.STOPPING);
  }

  /** True when a fault is announced that only service clears. */
  public boolean needsService() {
    return (latched & FaultRules.SERVICE) != 0;
  }

  /** Writes or reads what outlasts a scan. */
  public void carry(StateWords state) {
    phase = Phase.of(state.carry(phase.ordinal()));
    pulse = state.carry(pulse);
    dryMs = state.carry(dryMs);
    hotMs = state.carry(hotMs);
    latched = state.carry(latched);
    remainingMs = state.carry(remainingMs);
    power.carry(state);
    moment.latched = latched;
    toldPhase = phase.ordinal();
    started = false;
    heard = null;
  }
}
