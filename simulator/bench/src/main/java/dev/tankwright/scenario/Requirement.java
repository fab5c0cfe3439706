package dev.tankwright.scenario;

import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.Place;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.StringJoiner;

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
   * The condition holds in every step, or in every step of a situation.
   *
   * @param label name, id and place
   * @param condition what must hold
   * @param during the situation; empty for all of the run
   */
  record Always(Label label, Condition condition, Optional<Condition> during)
      implements Requirement {
    /** In every step of the run. */
    public Always(Label label, Condition condition) {
      this(label, condition, Optional.empty());
    }

    @Override
    public String statement() {
      return "always " + condition + during.map(d -> " while " + d).orElse("");
    }

    @Override
    public RequirementWatch watch() {
      return new AlwaysWatch(this, condition, during.orElse(null));
    }
  }

  /**
   * The condition holds in no step, or in no step of a situation.
   *
   * @param label name, id and place
   * @param condition what must not hold
   * @param during the situation; empty for all of the run
   */
  record Never(Label label, Condition condition, Optional<Condition> during)
      implements Requirement {
    /** In no step of the run. */
    public Never(Label label, Condition condition) {
      this(label, condition, Optional.empty());
    }

    @Override
    public String statement() {
      return "never " + condition + during.map(d -> " while " + d).orElse("");
    }

    @Override
    public RequirementWatch watch() {
      return new AlwaysWatch(this, new Condition.Not(condition), during.orElse(null));
    }
  }

  /**
   * The condition holds in at least one step.
   *
   * @param label name, id and place
   * @param condition what must become true
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

  /**
   * Whenever the trigger becomes true, the condition holds from that step on for at least a time.
   * Without a trigger: whenever the condition becomes true itself.
   *
   * @param label name, id and place
   * @param condition what must stay true
   * @param forMillis the time, ms, above 0
   * @param after the trigger; empty for the condition itself
   */
  record Stays(Label label, Condition condition, long forMillis, Optional<Condition> after)
      implements Requirement {
    @Override
    public String statement() {
      String what = "stays " + condition + " for " + Plain.duration(forMillis);
      return what + after.map(a -> " after " + a).orElse(" whenever it becomes true");
    }

    @Override
    public RequirementWatch watch() {
      return new StaysWatch(this);
    }
  }

  /**
   * Whenever the trigger becomes true, the condition holds from that step on until the step in
   * which the end holds. Without a trigger: once, from the beginning of the run.
   *
   * @param label name, id and place
   * @param condition what must hold
   * @param end until when; the condition may be false in that step already
   * @param after the trigger; empty for the beginning of the run
   */
  record Until(Label label, Condition condition, Condition end, Optional<Condition> after)
      implements Requirement {
    @Override
    public String statement() {
      String what = "holds " + condition + " until " + end;
      return what + after.map(a -> " after " + a).orElse("");
    }

    @Override
    public RequirementWatch watch() {
      return new UntilWatch(this);
    }
  }

  /**
   * The condition becomes true so and so often. One that is true in the first step of the run
   * became true there.
   *
   * @param label name, id and place
   * @param condition what is counted
   * @param atLeast the fewest times; empty for none
   * @param atMost the most times; empty for any
   */
  record Count(Label label, Condition condition, OptionalLong atLeast, OptionalLong atMost)
      implements Requirement {
    @Override
    public String statement() {
      StringJoiner bounds = new StringJoiner(", ", "count " + condition + ": ", "");
      atLeast.ifPresent(n -> bounds.add("at least " + n));
      atMost.ifPresent(n -> bounds.add("at most " + n));
      return bounds.toString();
    }

    @Override
    public RequirementWatch watch() {
      return new CountWatch(this);
    }
  }
}
