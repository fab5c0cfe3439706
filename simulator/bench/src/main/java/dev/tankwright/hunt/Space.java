package dev.tankwright.hunt;

import dev.tankwright.scenario.Scenario;
import java.util.List;
import java.util.OptionalInt;

/** A unit cube of scenarios: a pure function from shares, 0–1 each, to a scenario. Immutable. */
public interface Space {
  /** What sets it apart from other spaces of the same search. */
  String name();

  /** What can be changed; at least one. */
  List<Coordinate> coordinates();

  /**
   * The scenario at a point, with the one requirement that is searched for.
   *
   * @param shares one for each coordinate; what lies outside 0–1 is taken for the nearer end
   */
  Scenario at(double[] shares);

  /** The values of the coordinates at a point, in their units. */
  List<Double> values(double[] shares);

  /**
   * Index of the entry of the timeline without which a run shows nothing; empty when any run may
   * show something.
   */
  OptionalInt needed();
}
