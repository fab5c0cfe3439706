package dev.tankwright.explore;

/** Is told how far an exploration has come. */
public interface Onlooker {
  /** Listens to nothing. */
  Onlooker NOBODY =
      new Onlooker() {
        @Override
        public void begins(Plan plan) {}

        @Override
        public void looked(Plan plan, int looked, int reached) {}

        @Override
        public void done(Plan plan, SetResult result) {}
      };

  /** A set is begun; in the thread that explores it. */
  void begins(Plan plan);

  /**
   * A set goes on; now and then, in the thread that explores it.
   *
   * @param looked at how many states it was looked
   * @param reached how many states are known by now
   */
  void looked(Plan plan, int looked, int reached);

  /** A set is at its end; in the thread that asked for the exploration. */
  void done(Plan plan, SetResult result);
}
