package dev.tankwright.scenario.quantity;

import dev.tankwright.plant.PartFault;

/** Sizes of part faults as files write them. */
public final class FaultSize {
  private FaultSize() {}

  /**
   * A size with its unit, for example {@code 60 %}.
   *
   * @throws IllegalArgumentException for {@link PartFault.Measure#NONE}
   */
  public static String text(PartFault.Measure measure, double size) {
    return dimension(measure).shown(size);
  }

  public static Dimension dimension(PartFault.Measure measure) {
    return switch (measure) {
      case NONE -> throw new IllegalArgumentException("a fault without a size has no dimension");
      case DIFFERENCE -> Dimension.DIFFERENCE;
      case DRIFT -> Dimension.DRIFT;
      case SHARE -> Dimension.FRACTION;
      case TIME -> Dimension.TIME;
      case VOLUME -> Dimension.VOLUME;
      case BITS, OCTETS -> Dimension.NUMBER;
    };
  }
}
