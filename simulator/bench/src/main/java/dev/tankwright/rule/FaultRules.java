package dev.tankwright.rule;

import dev.tankwright.controller.board.ClearRule;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Severity;

/** What latched faults must do. Stateless: the faults are those that were announced. */
final class FaultRules {
  private static final int CUT_OFF = bits(Severity.CUT_OFF);

  /** Faults that stop. */
  static final int STOPPING = CUT_OFF | bits(Severity.LOCKOUT);

  /** Faults that no reset clears. */
  static final int SERVICE = serviceBits();

  private FaultRules() {}

  /** The first rule that is broken, or {@code null}. */
  static Rule broken(int latched, Outputs out) {
    if ((latched & CUT_OFF) != 0 && out.cutOffRelay) {
      return Rule.CUT_OFF_OPENS_RELAY;
    }
    boolean stops = (latched & STOPPING) != 0;
    if (stops != (out.panel.phase == Phase.LOCKOUT)) {
      return Rule.FAULT_LOCKS_OUT;
    }
    return out.panel.fault == worst(latched) ? null : Rule.PANEL_SHOWS_WORST;
  }

  private static Fault worst(int latched) {
    if (latched == 0) {
      return null;
    }
    int candidates = latched & CUT_OFF;
    if (candidates == 0) {
      candidates = latched & STOPPING;
    }
    if (candidates == 0) {
      candidates = latched;
    }
    return Fault.of(Integer.numberOfTrailingZeros(candidates));
  }

  private static int bits(Severity severity) {
    int bits = 0;
    for (Fault fault : Fault.values()) {
      bits |= fault.severity() == severity ? fault.bit() : 0;
    }
    return bits;
  }

  private static int serviceBits() {
    int bits = 0;
    for (Fault fault : Fault.values()) {
      bits |= fault.clearRule() == ClearRule.SERVICE ? fault.bit() : 0;
    }
    return bits;
  }
}
