package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.condition.Condition;
import java.util.LinkedHashMap;
import java.util.Map;

/** Requirements as scenario files write them: keys and values, in order. */
final class RequirementFields {
  private final Map<String, String> fields = new LinkedHashMap<>();

  private RequirementFields() {}

  static Map<String, String> of(Requirement requirement) {
    RequirementFields own = new RequirementFields();
    own.fields.put("name", ScenarioWriter.quoted(requirement.label().name()));
    if (!requirement.label().id().isEmpty()) {
      own.fields.put("id", requirement.label().id());
    }
    own.kind(requirement);
    return own.fields;
  }

  private void kind(Requirement requirement) {
    if (requirement instanceof Requirement.Always always) {
      put("always", always.condition());
      always.during().ifPresent(during -> put("while", during));
    } else if (requirement instanceof Requirement.Never never) {
      put("never", never.condition());
      never.during().ifPresent(during -> put("while", during));
    } else if (requirement instanceof Requirement.Eventually eventually) {
      put("eventually", eventually.condition());
      eventually.beforeMillis().ifPresent(millis -> time("before", millis));
    } else if (requirement instanceof Requirement.Within within) {
      time("within", within.limitMillis());
      put("after", within.after());
      put("holds", within.holds());
    } else {
      rarer(requirement);
    }
  }

  private void rarer(Requirement requirement) {
    if (requirement instanceof Requirement.Stays stays) {
      put("stays", stays.condition());
      time("for", stays.forMillis());
      stays.after().ifPresent(after -> put("after", after));
    } else if (requirement instanceof Requirement.Until until) {
      put("until", until.end());
      put("holds", until.condition());
      until.after().ifPresent(after -> put("after", after));
    } else if (requirement instanceof Requirement.Count count) {
      put("count", count.condition());
      count.atLeast().ifPresent(times -> fields.put("at-least", Long.toString(times)));
      count.atMost().ifPresent(times -> fields.put("at-most", Long.toString(times)));
    } else {
      throw new IllegalArgumentException("no text is known for " + requirement);
    }
  }

  private void put(String key, Condition condition) {
    fields.put(key, ScenarioWriter.quoted(condition.toString()));
  }

  private void time(String key, long millis) {
    fields.put(key, millis + " ms");
  }
}
