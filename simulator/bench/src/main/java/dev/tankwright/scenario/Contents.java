package dev.tankwright.scenario;

import java.util.StringJoiner;

/**
 * What a scenario says of solution and load that neither the bath nor the controller knows. It
 * changes no signal of a run, but the host publishes it in events and in the record of a cycle, and
 * the report shows it.
 *
 * @param lot lot of the chemistry, one line; empty when not given
 * @param load kind of load, one line; empty when not given
 */
public record Contents(String lot, String load) {
  /** Nothing is said. */
  public static final Contents UNSTATED = new Contents("", "");

  /** For example {@code solution of lot 26-114; load: hinged instruments}; may be empty. */
  @Override
  public String toString() {
    StringJoiner text = new StringJoiner("; ");
    if (!lot.isEmpty()) {
      text.add("solution of lot " + lot);
    }
    if (!load.isEmpty()) {
      text.add("load: " + load);
    }
    return text.toString();
  }
}
