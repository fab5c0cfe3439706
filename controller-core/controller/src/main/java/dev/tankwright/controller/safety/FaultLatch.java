package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.ClearRule;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Severity;
import dev.tankwright.controller.board.StateWords;

/**
 * The latched faults, one bit each. A fault is announced once when it is latched and once when it
 * is cleared.
 */
public final class FaultLatch {
  private static final int CUT_OFF = bits(Severity.CUT_OFF);
  private static final int STOPPING = CUT_OFF | bits(Severity.LOCKOUT);
  private static final int ON_ACKNOWLEDGE = bits(ClearRule.ACKNOWLEDGE);
  private static final int ON_RESET = bits(ClearRule.RESET) | ON_ACKNOWLEDGE;
  private static final int ON_SERVICE = bits(ClearRule.SERVICE);

  private final FaultLog log;
  private int latched;

  /** Makes a latch without faults that announces to the given log. */
  public FaultLatch(FaultLog log) {
    this.log = log;
  }

  /** Latches every fault whose bit is set; those that are latched already stay as they are. */
  void raiseAll(int bits) {
    for (int left = bits & ~latched; left != 0; left &= left - 1) {
      raise(Fault.of(Integer.numberOfTrailingZeros(left)));
    }
  }

  /** Latches a fault; one that is latched already stays as it is. */
  public void raise(Fault fault) {
    if ((latched & fault.bit()) == 0) {
      latched |= fault.bit();
      log.raised(fault);
    }
  }

  /** True when a fault is latched that switches everything off. */
  public boolean isStopping() {
    return (latched & STOPPING) != 0;
  }

  /** True when a fault is latched that opens the cut-off relay. */
  public boolean isCutOff() {
    return (latched & CUT_OFF) != 0;
  }

  /** True when a fault is latched that no reset clears. */
  public boolean needsService() {
    return (latched & ON_SERVICE) != 0;
  }

  /** The latched faults that switch everything off, one bit each. */
  int stopping() {
    return latched & STOPPING;
  }

  /** Clears what an acknowledgement clears. */
  public void acknowledge() {
    clear(ON_ACKNOWLEDGE);
  }

  /** Clears what a reset clears; the caller has seen that no cause is present. */
  public void reset() {
    clear(ON_RESET);
  }

  private void clear(int which) {
    int cleared = latched & which;
    latched &= ~which;
    while (cleared != 0) {
      log.cleared(Fault.of(Integer.numberOfTrailingZeros(cleared)));
      cleared &= cleared - 1;
    }
  }

  /**
   * The most severe latched fault, the one declared first among equals; {@code null} when there is
   * none.
   */
  public Fault worst() {
    int candidates = latched & CUT_OFF;
    if (candidates == 0) {
      candidates = latched & STOPPING;
    }
    if (candidates == 0) {
      candidates = latched;
    }
    return candidates == 0 ? null : Fault.of(Integer.numberOfTrailingZeros(candidates));
  }

  /** The latched faults, one bit each by {@link Fault#bit()}. */
  public int bits() {
    return latched;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    latched = state.carry(latched);
  }

  private static int bits(Severity severity) {
    int bits = 0;
    for (int i = 0; i < Fault.count(); i++) {
      bits |= Fault.of(i).severity() == severity ? Fault.of(i).bit() : 0;
    }
    return bits;
  }

  private static int bits(ClearRule rule) {
    int bits = 0;
    for (int i = 0; i < Fault.count(); i++) {
      bits |= Fault.of(i).clearRule() == rule ? Fault.of(i).bit() : 0;
    }
    return bits;
  }
}
