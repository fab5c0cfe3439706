package dev.tankwright.timeline;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.yaml.Place;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/** What must be true of a whole timeline, as scenario files say it. Stateless. */
public final class Require {
  private Require() {}

  /**
   * The condition holds in every step.
   *
   * @param name the requirement's name, unique in its timeline
   */
  public static Requirement always(String name, Condition condition) {
    return new Requirement.Always(label(name), condition);
  }

  /**
   * The condition holds in no step.
   *
   * @param name the requirement's name, unique in its timeline
   */
  public static Requirement never(String name, Condition condition) {
    return new Requirement.Never(label(name), condition);
  }

  /**
   * The condition holds in at least one step.
   *
   * @param name the requirement's name, unique in its timeline
   */
  public static Requirement eventually(String name, Condition condition) {
    return new Requirement.Eventually(label(name), condition, OptionalLong.empty());
  }

  /**
   * Whenever one condition becomes true, another holds within a time.
   *
   * @param name the requirement's name, unique in its timeline
   * @param limit the longest reaction
   * @param after what is reacted to
   * @param holds the reaction
   */
  public static Requirement within(String name, Duration limit, Condition after, Condition holds) {
    return new Requirement.Within(label(name), limit.toMillis(), after, holds);
  }

  /**
   * Whenever the trigger becomes true, the condition holds for at least a time.
   *
   * @param name the requirement's name, unique in its timeline
   */
  public static Requirement stays(
      String name, Condition condition, Duration time, Condition after) {
    return new Requirement.Stays(label(name), condition, time.toMillis(), Optional.of(after));
  }

  static Requirement.Label label(String name) {
    return new Requirement.Label(name, "", Place.START);
  }
}
