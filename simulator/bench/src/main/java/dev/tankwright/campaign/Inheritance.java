package dev.tankwright.campaign;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.FileBlock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which of a scenario's own requirements are asked of its cases too. */
final class Inheritance {
  private static final String KEY = "inherit";
  private static final List<String> WORDS = List.of("with-id", "all", "none");

  private final FileBlock block;
  private final List<Requirement> own;
  private final List<String> chosen;

  private Inheritance(FileBlock block, List<Requirement> own, List<String> chosen) {
    this.block = block;
    this.own = own;
    this.chosen = chosen;
  }

  /** Reads the choice; without one, all requirements that carry an id are taken over. */
  static Inheritance read(FileBlock block, List<Requirement> own) {
    if (!block.has(KEY)) {
      return new Inheritance(block, own, List.of(WORDS.get(0)));
    }
    if (block.isText(KEY)) {
      return new Inheritance(
          block, own, block.word(KEY, WORDS).map(List::of).orElse(List.of("none")));
    }
    return new Inheritance(block, own, block.texts(KEY));
  }

  /** The requirements taken over, scenario by scenario. */
  List<List<Requirement>> of(List<Scenario> bases) {
    List<List<Requirement>> all = new ArrayList<>();
    bases.forEach(base -> all.add(base.requirements().stream().filter(this::takes).toList()));
    checkNames(bases);
    checkTwins(bases, all);
    return all;
  }

  private boolean takes(Requirement requirement) {
    if (chosen.size() == 1 && WORDS.contains(chosen.get(0))) {
      boolean identified = !requirement.label().id().isEmpty();
      return chosen.get(0).equals("all") || (chosen.get(0).equals("with-id") && identified);
    }
    return chosen.contains(requirement.label().name());
  }

  private void checkNames(List<Scenario> bases) {
    Set<String> known = new HashSet<>(WORDS);
    bases.forEach(base -> base.requirements().forEach(r -> known.add(r.label().name())));
    for (String name : chosen) {
      if (!known.contains(name)) {
        block.report(KEY, "no scenario under 'base' has a requirement called '" + name + "'");
      }
    }
  }

  /** One name can stand for one requirement only. */
  private void checkTwins(List<Scenario> bases, List<List<Requirement>> all) {
    Map<String, String> statements = new HashMap<>();
    own.forEach(r -> statements.put(r.label().name(), "is the campaign's own too"));
    for (int i = 0; i < bases.size(); i++) {
      for (Requirement requirement : all.get(i)) {
        String name = requirement.label().name();
        String before = statements.putIfAbsent(name, requirement.statement());
        if (before != null && !before.equals(requirement.statement())) {
          block.report(
              own.isEmpty() ? KEY : "requirements",
              "the requirement '"
                  + name
                  + "' of "
                  + bases.get(i).file()
                  + " has a name that is already in use; rename one of them");
        }
      }
    }
  }
}
