package dev.tankwright.plant.bath;

/**
 * Looks on while the bath moves, so that a run can be followed exactly or solved again by other
 * means. Called on the bath's thread; must change nothing that it is given, and keep no reference.
 */
public interface BathObserver {
  /** Nobody looks on. */
  BathObserver NONE =
      new BathObserver() {
        @Override
        public void stepped(Surroundings surroundings, double[] state) {}

        @Override
        public void jumped(double[] state) {}
      };

  /**
   * A step has passed.
   *
   * @param surroundings what acted over the step
   * @param state the bath's state after it, see {@link BathState}
   */
  void stepped(Surroundings surroundings, double[] state);

  /**
   * Something was poured in, taken out or exchanged between two steps.
   *
   * @param state the bath's state after it, see {@link BathState}
   */
  void jumped(double[] state);
}
