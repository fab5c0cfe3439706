package dev.tankwright.plant;

/** Which parts are broken now, and by how much. */
final class BrokenParts {
  private long bits;
  private final double[] sizes = new double[PartFault.values().length];

  void set(PartFault fault, boolean broken, double size) {
    long bit = 1L << fault.ordinal();
    bits = broken ? bits | bit : bits & ~bit;
    sizes[fault.ordinal()] = broken ? size : 0;
  }

  /** True while every part is whole. */
  boolean none() {
    return bits == 0;
  }

  boolean has(PartFault fault) {
    return (bits & 1L << fault.ordinal()) != 0;
  }

  /** Size of a fault in its own unit; 0 when the part is whole. */
  double size(PartFault fault) {
    return sizes[fault.ordinal()];
  }

  /** Size of a fault that says what is left; 1 when the part is whole. */
  double left(PartFault fault) {
    return has(fault) ? size(fault) : 1;
  }
}
