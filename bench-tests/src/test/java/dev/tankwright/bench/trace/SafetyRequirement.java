package dev.tankwright.bench.trace;

import dev.tankwright.bench.docs.Page;
import java.util.List;

/**
 * A row of docs/safety.md, Requirements.
 *
 * @param id as {@code SR-01}
 * @param statement what must hold
 */
record SafetyRequirement(String id, String statement) {
  /** Every requirement, in the order of the page. */
  static List<SafetyRequirement> all() {
    return Page.read("docs/safety.md").section("Requirements").rows().stream()
        .map(row -> new SafetyRequirement(row.get(0), row.get(1)))
        .toList();
  }
}
