package dev.tankwright.loop;

import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import java.util.Arrays;

/** Breaks parts and mends those whose time is over. */
final class Repairs {
  private static final PartFault[] FAULTS = PartFault.values();
  private static final long NEVER = Long.MAX_VALUE;

  private final Plant plant;
  private final long[] mendAt = new long[FAULTS.length];
  private long next = NEVER;

  Repairs(Plant plant) {
    this.plant = plant;
    Arrays.fill(mendAt, NEVER);
  }

  void breakPart(Deed.Break deed, long millis) {
    plant.breakPart(deed.fault(), deed.size());
    boolean forGood = deed.forMillis() == Deed.Break.FOR_GOOD;
    mendAt[deed.fault().ordinal()] = forGood ? NEVER : millis + deed.forMillis();
    findNext();
  }

  void mend(PartFault fault) {
    plant.mendPart(fault);
    mendAt[fault.ordinal()] = NEVER;
    findNext();
  }

  /** Mends what is due; called in every step in which anything is broken. */
  void step(long millis) {
    if (millis < next) {
      return;
    }
    for (PartFault fault : FAULTS) {
      if (mendAt[fault.ordinal()] <= millis) {
        mend(fault);
      }
    }
  }

  private void findNext() {
    next = NEVER;
    for (long moment : mendAt) {
      next = Math.min(next, moment);
    }
  }
}
