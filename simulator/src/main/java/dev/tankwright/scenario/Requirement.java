package dev.tankwright.scenario;

import java.util.OptionalLong;

/** What must be true of a run. Immutable; each run is judged by a {@link #watch()} of its own. */
public sealed interface Requirement {
  /**
   * What a requirement is known by.
   *
   * @param name its name, unique in its scenario
   * @param id id of the safety requirement it shows, {@code SR-nn}, or empty
   * @param place where it stands in the file
   */
  record Label(String name, String id, Place place) {}

  /** Name, id and place. */
  Label label();

  /** The requirement in words, for example {@code never ultrasound and lid-open}. */
  String statement();

  /** A judge for one run. */
  RequirementWatch watch();

  /**
   * The condition holds in every step.
   *
   * @param label name, id and place
   * @param condition what must hold
   */
  record Always(Label label, Condition condition) implements Requirement {
    @Override
    public String statement() {
      return "always " + condition;
    }

    @Override
    public RequirementWatch watch() {
      return new AlwaysWatch(this, condition);
    }
  }

  /**
   * The condition holds in no step.
   *
   * @param label name, id and place
   * @param condition what must not hold
   */
  record Never(Label label, Condition condition) implements Requirement {
    @Override
    public String statement() {
      return "never " + condition;
    }

    @Override
    public RequirementWatch watch() {
      return new AlwaysWatch(this, new Condition.Not(condition));
    }
  }

  /**
   * The condition holds in at least one step.
   *
   * @param label name, id and place
   * @param condition what must come to hold
   * @param beforeMillis the latest moment at which it may first hold, ms since the start of the
   *     run; empty for the end of the run
   */
  record Eventually(Label label, Condition condition, OptionalLong beforeMillis)
      implements Requirement {
    @Override
    public String statement() {
      String what = "eventually " + condition;
      return beforeMillis.isEmpty()
          ? what
          : what + " before " + Plain.duration(beforeMillis.getAsLong());
    }

    @Override
    public RequirementWatch watch() {
      return new EventuallyWatch(this);
    }
  }

  /**
   * Whenever one condition becomes true, another holds within a time. A condition that is true in
   * the first step of the run became true there.
   *
   * @param label name, id and place
   * @param limitMillis the longest reaction, ms
   * @param after what is reacted to
   * @param holds the reaction
   */
  record Within(Label label, long limitMillis, Condition after, Condition holds)
      implements Requirement {
    @Override
    public String statement() {
      return "within " + Plain.duration(limitMillis) + " after " + after + ": " + holds;
    }

    @Override
    public RequirementWatch watch() {
      return new WithinWatch(this);
    }
  }
}
