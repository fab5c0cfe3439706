package dev.tankwright.plant.bath;

/**
 * What went in, what went out and what stayed in a bath since its start. What stayed is read from
 * the nodes, the rest from ledgers at the boundary, so that a difference is an error of the bath.
 *
 * @param energy energies, J
 * @param mass masses, kg
 */
public record Balance(Flow energy, Flow mass) {

  /**
   * One conserved quantity.
   *
   * @param in what came across the boundary
   * @param out what left across it
   * @param stayed what the bath holds more than at its start
   */
  public record Flow(double in, double out, double stayed) {
    /** What does not add up. */
    public double residual() {
      return in - out - stayed;
    }

    /** What moved at all: the scale that a residual is to be held against. */
    public double throughput() {
      return Math.abs(in) + Math.abs(out) + Math.abs(stayed);
    }
  }
}
