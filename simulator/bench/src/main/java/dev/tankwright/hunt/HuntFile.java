package dev.tankwright.hunt;

import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.Campaign;
import dev.tankwright.campaign.CampaignReader;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.PlanException;
import dev.tankwright.campaign.Span;
import dev.tankwright.campaign.Variation;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Reads what a search is given: a scenario, or a campaign with a space for each of its cells.
 *
 * @param path the file
 * @param requirement name of the requirement
 * @param fault of a campaign, the one fault to search; empty for all
 * @param phase of a campaign, the one phase to search; empty for all
 * @param shiftMillis of a scenario, how much earlier or later its entries may be, ms
 */
public record HuntFile(
    Path path,
    String requirement,
    Optional<String> fault,
    Optional<String> phase,
    long shiftMillis) {
  private static final Pattern CAMPAIGN = Pattern.compile("(?m)^[\"']?campaign[\"']?\\s*:");

  /** The file, or what was asked of it, cannot be used. */
  public static final class UnusableException extends Exception {
    private static final long serialVersionUID = 1L;

    UnusableException(String message) {
      super(message);
    }
  }

  /**
   * Reads the file.
   *
   * @throws ScenarioException when it is no valid scenario or campaign
   * @throws PlanException when the campaign cannot be planned
   * @throws UnusableException when it lacks the requirement, the fault or the phase
   */
  public List<Space> spaces() throws ScenarioException, PlanException, UnusableException {
    return spaces(warning -> {});
  }

  /**
   * Reads the file, and tells of old names of keys in it.
   *
   * @param warned takes each
   * @throws ScenarioException when it is no valid scenario or campaign
   * @throws PlanException when the campaign cannot be planned
   * @throws UnusableException when it lacks the requirement, the fault or the phase
   */
  public List<Space> spaces(Consumer<Problem> warned)
      throws ScenarioException, PlanException, UnusableException {
    return isCampaign() ? cells(warned) : scenario(warned);
  }

  private boolean isCampaign() {
    try {
      return CAMPAIGN.matcher(Files.readString(path, StandardCharsets.UTF_8)).find();
    } catch (IOException e) {
      // The scenario's reader tells what is wrong with the file, and better.
      return false;
    }
  }

  private List<Space> scenario(Consumer<Problem> warned)
      throws ScenarioException, UnusableException {
    if (fault.isPresent() || phase.isPresent()) {
      throw new UnusableException(
          path + " is a scenario; --fault and --phase select cells of a campaign");
    }
    Scenario scenario = ScenarioReader.read(path, warned);
    Requirement wanted = find(scenario.requirements());
    return List.of(new ScenarioSpace(scenario, wanted, shiftMillis, usual(scenario)));
  }

  /** What is usually allowed to parts, mains and room; ours, no source, but for class B. */
  private static Map<Axis, Span> usual(Scenario scenario) {
    Map<Axis, Span> spans = new EnumMap<>(Axis.class);
    spans.put(Axis.HEATER, new Span(0.9, 1.1));
    spans.put(Axis.MAINS, new Span(0.9, 1.1));
    double room = scenario.start().ambientCelsius();
    spans.put(Axis.AMBIENT, new Span(Math.min(10, room), Math.max(35, room)));
    spans.put(Axis.CONTROL_SENSOR, new Span(-1, 1));
    spans.put(Axis.CUT_OFF_SENSOR, new Span(-1, 1));
    spans.put(Axis.FILL, new Span(0.95, 1.05));
    spans.put(Axis.RELAY_DELAY, new Span(10, 50));
    return spans;
  }

  private List<Space> cells(Consumer<Problem> warned)
      throws ScenarioException, PlanException, UnusableException {
    Campaign campaign = CampaignReader.read(path, warned);
    Plan plan = new Plan(campaign);
    Set<Variation> variations = new LinkedHashSet<>();
    int perCell = campaign.moments().count() * campaign.draws();
    for (int number = 0; number < plan.cases(); number += perCell) {
      variations.add(plan.variation(number));
    }
    List<Requirement> known = new ArrayList<>();
    variations.forEach(variation -> known.addAll(variation.requirements()));
    find(known);
    List<Space> spaces = new ArrayList<>();
    for (Variation variation : variations) {
      asked(variation).ifPresent(r -> spaces.add(new CellSpace(variation, r)));
    }
    spaces.removeIf(space -> space.coordinates().isEmpty());
    if (spaces.isEmpty()) {
      throw new UnusableException(nothing(variations));
    }
    return spaces;
  }

  private Optional<Requirement> asked(Variation variation) {
    boolean chosen =
        fault.map(variation.injection().name()::equals).orElse(true)
            && phase.map(variation.phase().name()::equals).orElse(true);
    return variation.requirements().stream()
        .filter(r -> chosen && r.label().name().equals(requirement))
        .findFirst();
  }

  private String nothing(Set<Variation> variations) {
    return path
        + ": no cases exist for the fault "
        + fault.orElse("(any)")
        + " in the phase "
        + phase.orElse("(any)")
        + "; its faults are "
        + variations.stream().map(v -> v.injection().name()).distinct().toList()
        + ", its phases "
        + variations.stream().map(Variation::phase).distinct().toList();
  }

  private Requirement find(List<Requirement> known) throws UnusableException {
    return known.stream()
        .filter(r -> r.label().name().equals(requirement))
        .findFirst()
        .orElseThrow(
            () ->
                new UnusableException(
                    path
                        + " has no requirement '"
                        + requirement
                        + "'; it has "
                        + known.stream()
                            .map(r -> "'" + r.label().name() + "'")
                            .distinct()
                            .toList()));
  }
}
