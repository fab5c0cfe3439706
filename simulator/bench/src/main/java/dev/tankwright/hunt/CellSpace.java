package dev.tankwright.hunt;

import dev.tankwright.campaign.Setting;
import dev.tankwright.campaign.Variation;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import java.util.List;
import java.util.OptionalInt;

/**
 * One injection in one phase, over its moments and tolerances.
 *
 * @param variation the scenarios
 * @param requirement what is searched for
 */
record CellSpace(Variation variation, Requirement requirement) implements Space {
  @Override
  public String name() {
    return variation.injection().name() + " in " + variation.phase();
  }

  @Override
  public List<Coordinate> coordinates() {
    return variation.free().stream().map(a -> new Coordinate(a.key(), a.unit())).toList();
  }

  @Override
  public Scenario at(double[] shares) {
    return variation.scenario(setting(shares)).withRequirements(List.of(requirement));
  }

  @Override
  public List<Double> values(double[] shares) {
    Setting setting = setting(shares);
    return variation.free().stream().map(setting::value).toList();
  }

  private Setting setting(double[] shares) {
    return variation.at(shares, variation.base().seed());
  }

  @Override
  public OptionalInt needed() {
    return OptionalInt.of(variation.base().timeline().size());
  }
}
