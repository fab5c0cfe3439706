package dev.tankwright.bench.coverage;

import dev.tankwright.controller.sequence.Transition;
import dev.tankwright.events.EventType;
import dev.tankwright.scenario.TimelineEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the library covers. Made by running every scenario of it once, and once per action left out.
 */
public final class Coverage {
  private final Map<LibraryScenario, Ran> runs = new LinkedHashMap<>();
  private final Map<Transition, Set<String>> transitions = new LinkedHashMap<>();
  private final Map<Target, Map<String, Effect>> effects = new LinkedHashMap<>();
  private final List<String> withoutEffect = new ArrayList<>();
  private final Map<String, Set<String>> faults = new LinkedHashMap<>();
  private final Map<String, Set<String>> refusals = new LinkedHashMap<>();

  private Coverage() {}

  /** Runs the library. */
  public static Coverage of(List<LibraryScenario> library) {
    Coverage coverage = new Coverage();
    library.forEach(coverage::add);
    return coverage;
  }

  private void add(LibraryScenario one) {
    Ran ran = Ran.of(one.scenario());
    runs.put(one, ran);
    String label = one.label();
    TransitionsSeen.in(ran).forEach(t -> put(transitions, t, label));
    ran.said(EventType.FAULT_RAISED, "fault").forEach(fault -> put(faults, fault, label));
    ran.said(EventType.COMMAND_REFUSED, "refusal").forEach(word -> put(refusals, word, label));
    targets(one).stream().filter(this::isLookedFor).forEach(target -> effect(target, one, ran));
  }

  /** Faults and pins are looked for everywhere; of any other action one effect is enough. */
  private boolean isLookedFor(Target target) {
    return target.kind() != Target.Kind.ACTION || effects(target).isEmpty();
  }

  private static Set<Target> targets(LibraryScenario one) {
    Set<Target> targets = new LinkedHashSet<>();
    one.scenario().timeline().stream()
        .map(TimelineEntry::action)
        .forEach(action -> targets.addAll(Target.of(action)));
    return targets;
  }

  private void effect(Target target, LibraryScenario one, Ran ran) {
    Effect.of(target, one.scenario(), ran)
        .ifPresentOrElse(
            effect ->
                effects
                    .computeIfAbsent(target, t -> new LinkedHashMap<>())
                    .put(one.label(), effect),
            () -> withoutEffect.add(one.label() + ": " + target.name()));
  }

  private static <K> void put(Map<K, Set<String>> map, K key, String label) {
    map.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(label);
  }

  /** Every scenario with its run, in the order of the library. */
  Map<LibraryScenario, Ran> runs() {
    return runs;
  }

  /** The scenarios that took a line of the phase table. */
  Set<String> transition(Transition line) {
    return transitions.getOrDefault(line, Set.of());
  }

  /** What something that timelines do brought about, by scenario. */
  Map<String, Effect> effects(Target target) {
    return effects.getOrDefault(target, Map.of());
  }

  /** What was done in a scenario and changed nothing there, as scenario and name. */
  List<String> withoutEffect() {
    return withoutEffect;
  }

  /** The scenarios in which the controller latched a fault. */
  Set<String> fault(String name) {
    return faults.getOrDefault(name, Set.of());
  }

  /** The scenarios in which a command was refused for a reason. */
  Set<String> refusal(String name) {
    return refusals.getOrDefault(name, Set.of());
  }
}
