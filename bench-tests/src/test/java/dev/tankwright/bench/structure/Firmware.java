package dev.tankwright.bench.structure;

import dev.tankwright.bench.structure.MethodFacts.Call;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The rules of firmware over a set of compiled classes: no floating point anywhere, and nothing
 * that allocates or leaves the set in what a root method can reach. A call is followed to the
 * method of the named class or of its parents, and to every override below. Constructors and static
 * initialisers are reached only through {@code new} and the loading of a class: the first is itself
 * a finding, the second happens once.
 */
final class Firmware {
  /** What may be called outside the set: integers in, integers out. */
  private static final Set<String> HARMLESS =
      Set.of(
          "java/lang/Math.min(II)I",
          "java/lang/Math.max(II)I",
          "java/lang/Math.min(JJ)J",
          "java/lang/Math.max(JJ)J",
          "java/lang/Math.abs(I)I",
          "java/lang/Integer.numberOfTrailingZeros(I)I");

  private final Map<String, ClassFacts> classes = new TreeMap<>();

  Firmware(Collection<ClassFacts> facts) {
    facts.forEach(fact -> classes.put(fact.name, fact));
  }

  /** Every use of floating point, reachable or not. */
  List<String> floatingPoint() {
    List<String> found = new ArrayList<>();
    for (ClassFacts fact : classes.values()) {
      found.addAll(fact.floatingFields);
      fact.methods.values().forEach(method -> found.addAll(method.floating));
    }
    return found;
  }

  /** Every call into the given packages or classes, reachable or not. */
  List<String> callsInto(String... forbidden) {
    List<String> found = new ArrayList<>();
    for (ClassFacts fact : classes.values()) {
      for (MethodFacts method : fact.methods.values()) {
        for (Call call : method.calls) {
          if (List.of(forbidden).stream().anyMatch(call.owner()::startsWith)) {
            found.add(method.id + " calls " + call.owner() + "." + call.name());
          }
        }
      }
    }
    return found;
  }

  /** What allocates, or may, in everything that the methods of the given name can reach. */
  List<String> allocationsFrom(String owner, String... names) {
    List<String> found = new ArrayList<>();
    for (MethodFacts method : reachable(owner, List.of(names))) {
      found.addAll(method.allocations);
      for (Call call : method.calls) {
        if (targets(call).isEmpty() && !isHarmless(call)) {
          found.add(method.id + " calls " + call.owner() + "." + call.key());
        }
      }
    }
    return found;
  }

  Set<MethodFacts> reachable(String owner, List<String> names) {
    Deque<MethodFacts> open = new ArrayDeque<>();
    classes.get(owner).methods.values().stream()
        .filter(m -> names.stream().anyMatch(n -> m.id.startsWith(owner + "." + n + "(")))
        .forEach(open::add);
    Set<MethodFacts> seen = new LinkedHashSet<>(open);
    while (!open.isEmpty()) {
      for (Call call : open.remove().calls) {
        targets(call).stream().filter(seen::add).forEach(open::add);
      }
    }
    return seen;
  }

  private boolean isHarmless(Call call) {
    boolean ordinal = classes.containsKey(call.owner()) && call.key().equals("ordinal()I");
    return ordinal || call.isCompilersOwn() || HARMLESS.contains(call.owner() + "." + call.key());
  }

  private List<MethodFacts> targets(Call call) {
    List<MethodFacts> targets = new ArrayList<>();
    for (ClassFacts fact : classes.values()) {
      boolean related = isBelow(fact.name, call.owner()) || isBelow(call.owner(), fact.name);
      MethodFacts method = fact.methods.get(call.key());
      if (related && method != null && !call.isCompilersOwn()) {
        targets.add(method);
      }
    }
    return targets;
  }

  private boolean isBelow(String name, String ancestor) {
    if (name.equals(ancestor)) {
      return true;
    }
    ClassFacts fact = classes.get(name);
    return fact != null && fact.parents.stream().anyMatch(parent -> isBelow(parent, ancestor));
  }
}
