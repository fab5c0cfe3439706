package dev.tankwright.plant;

/** Which parts are broken now. */
final class Breakages {
  private long bits;

  void set(PartFault fault, boolean broken) {
    long bit = 1L << fault.ordinal();
    bits = broken ? bits | bit : bits & ~bit;
  }

  boolean has(PartFault fault) {
    return (bits & 1L << fault.ordinal()) != 0;
  }
}
