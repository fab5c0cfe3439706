package dev.tankwright.loop;

/** Where the present value of a signal comes from. */
@FunctionalInterface
public interface SignalSource {
  /** Value of the signal now, see {@link Signal}. */
  double value(Signal signal);
}
