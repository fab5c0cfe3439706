package dev.tankwright.loop;

import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import java.util.Arrays;

/** Breaks parts and repairs those whose time is over. */
final class Repairs {
  private static final PartFault[] FAULTS = PartFault.values();
  private static final long NEVER = Long.MAX_VALUE;

  private final Plant plant;
  private final long[] repairAt = new long[FAULTS.length];
  private long next = NEVER;

  Repairs(Plant plant) {
    this.plant = plant;
    Arrays.fill(repairAt, NEVER);
  }

  void breakPart(Action.Break action, long millis) {
    plant.breakPart(action.fault(), action.size());
    boolean forGood = action.forMillis() == Action.Break.FOR_GOOD;
    repairAt[action.fault().ordinal()] = forGood ? NEVER : millis + action.forMillis();
    findNext();
  }

  void repair(PartFault fault) {
    plant.repairPart(fault);
    repairAt[fault.ordinal()] = NEVER;
    findNext();
  }

  /** Repairs what is due; called in every step in which anything is broken. */
  void step(long millis) {
    if (millis < next) {
      return;
    }
    for (PartFault fault : FAULTS) {
      if (repairAt[fault.ordinal()] <= millis) {
        repair(fault);
      }
    }
  }

  private void findNext() {
    next = NEVER;
    for (long moment : repairAt) {
      next = Math.min(next, moment);
    }
  }
}
