package dev.tankwright.explore;

/** Is told how far an exploration has come. */
public interface ProgressListener {
  /** Listens to nothing. */
  ProgressListener NOBODY =
      new ProgressListener() {
        @Override
        public void begins(FaultySet plan) {}

        @Override
        public void looked(FaultySet plan, int looked, int reached) {}

        @Override
        public void done(FaultySet plan, SetResult result) {}
      };

  /** A set is begun; in the thread that explores it. */
  void begins(FaultySet plan);

  /**
   * A set goes on; now and then, in the thread that explores it.
   *
   * @param looked at how many states it was looked
   * @param reached how many states are known by now
   */
  void looked(FaultySet plan, int looked, int reached);

  /** A set is at its end; in the thread that asked for the exploration. */
  void done(FaultySet plan, SetResult result);
}
