package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The whole content of a campaign file, read and checked. Immutable.
 *
 * @param file the file's name without folders
 * @param content the file's bytes as text
 * @param title one line
 * @param purpose one line
 * @param seed seed of everything that is drawn
 * @param bases the scenarios that are varied; at least one
 * @param injections what is done to them; at least one, names are unique
 * @param phases where; empty for every phase that a scenario reaches
 * @param moments when
 * @param tolerances range of every axis that has one
 * @param draws how many settings of the tolerances for each moment; the first is the nominal one
 * @param own requirements of the campaign itself
 * @param inherited of each base, the requirements that its cases are judged by too
 */
public record Campaign(
    String file,
    String content,
    String title,
    String purpose,
    long seed,
    List<Scenario> bases,
    List<Injection> injections,
    List<Phase> phases,
    Moments moments,
    Map<Axis, Span> tolerances,
    int draws,
    List<Requirement> own,
    List<List<Requirement>> inherited) {
  /** Keeps its own copies. */
  public Campaign {
    bases = List.copyOf(bases);
    injections = List.copyOf(injections);
    phases = List.copyOf(phases);
    Map<Axis, Span> spans = new EnumMap<>(Axis.class);
    spans.putAll(tolerances);
    tolerances = Collections.unmodifiableMap(spans);
    own = List.copyOf(own);
    inherited = inherited.stream().map(List::copyOf).toList();
  }

  /** The requirements of one base's cases: the campaign's own, then the base's. */
  public List<Requirement> requirements(int base) {
    return Stream.concat(own.stream(), inherited.get(base).stream()).toList();
  }
}
