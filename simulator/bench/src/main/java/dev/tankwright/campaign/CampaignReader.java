package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.FileBlock;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Reads campaign files. A file that cannot be used gives one {@link ScenarioException} with
 * everything that is wrong, each with its place. Stateless and thread-safe.
 */
public final class CampaignReader {
  private static final String NOUN = "campaign";
  private static final List<String> KEYS =
      List.of(
          NOUN,
          "purpose",
          "seed",
          "base",
          "faults",
          "except",
          "phases",
          "moments",
          "tolerances",
          "requirements",
          "inherit");
  private static final List<String> PHASES =
      Arrays.stream(Phase.values()).map(Phase::name).toList();
  private static final int LONGEST_TITLE = 120;
  private static final int LONGEST_PURPOSE = 1000;

  private final Path path;
  private final FileBlock block;
  private final Consumer<Problem> warned;

  private CampaignReader(Path path, FileBlock block, Consumer<Problem> warned) {
    this.path = path;
    this.block = block;
    this.warned = warned;
  }

  /**
   * Reads a file and the scenarios that it names.
   *
   * @param path the file; problems name it as it is given here
   * @throws ScenarioException when it is not there, cannot be read, or is not a valid campaign
   */
  public static Campaign read(Path path) throws ScenarioException {
    return read(path, warning -> {});
  }

  /**
   * Reads a file and the scenarios that it names, and tells of old names of keys in them.
   *
   * @param path the file
   * @param warned takes each
   * @throws ScenarioException as {@link #read(Path)}
   */
  public static Campaign read(Path path, Consumer<Problem> warned) throws ScenarioException {
    FileBlock.Document document = FileBlock.read(path, NOUN, KEYS);
    CampaignReader reader = new CampaignReader(path, document.block(), warned);
    Campaign campaign = reader.campaign(document.text());
    document.block().warnings().forEach(warned);
    return campaign;
  }

  private Campaign campaign(String content) throws ScenarioException {
    block.needs(NOUN, "campaign: Single faults");
    block.needs("purpose", "purpose: Shows that no single fault is dangerous");
    block.needs("base", "base: ../scenarios/first-cycle.yaml");
    block.needs("faults", "faults: every-part");
    String title = block.line(NOUN, LONGEST_TITLE).orElse("");
    String purpose = block.line("purpose", LONGEST_PURPOSE).orElse("");
    OptionalLong seed =
        block.has("seed") ? block.whole("seed", 0, Scenario.HIGHEST_SEED) : OptionalLong.of(1);
    List<Phase> phases = phases();
    Tolerances tolerances = Tolerances.read(block);
    Moments moments = new MomentsReader(block).read();
    List<Scenario> bases = new BaseReader(path, block, warned).read();
    // Faults and requirements are read against the first scenario; without one there is no use.
    block.finish();
    List<Injection> injections = new InjectionReader(block, bases.get(0)).read();
    List<Requirement> own = block.requirements("requirements", shortest(bases));
    Inheritance inheritance = Inheritance.read(block, own);
    List<List<Requirement>> inherited = inheritance.of(bases);
    if (own.isEmpty() && inherited.stream().allMatch(List::isEmpty)) {
      block.report(
          "requirements",
          "the cases have no requirements; give 'requirements', or inherit the scenario's with"
              + " 'inherit: all'");
    }
    block.finish();
    return new Campaign(
        String.valueOf(path.getFileName()),
        content,
        title,
        purpose,
        seed.orElseThrow(),
        bases,
        injections,
        phases,
        moments,
        tolerances.spans(),
        tolerances.draws(),
        own,
        inherited);
  }

  private static long shortest(List<Scenario> bases) {
    return bases.stream().mapToLong(Scenario::durationMillis).min().orElseThrow();
  }

  private List<Phase> phases() {
    List<Phase> phases = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String name : block.texts("phases")) {
      if (!PHASES.contains(name)) {
        String wanted = "; it must be one of " + String.join(", ", PHASES);
        block.report("phases", "there is no phase '" + name + "'" + wanted);
      } else if (!seen.add(name)) {
        block.report("phases", name + " is here twice; keep one");
      } else {
        phases.add(Phase.valueOf(name));
      }
    }
    return phases;
  }
}
