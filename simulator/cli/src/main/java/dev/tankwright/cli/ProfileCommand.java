package dev.tankwright.cli;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.facts.BathFacts;
import dev.tankwright.report.profile.FactsText;
import dev.tankwright.report.profile.ProfileFolder;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.profile.ProfileReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Shows the figures derived from a bath's profile. */
@CommandLine.Command(
    name = "profile",
    description = "Show the figures derived from a bath's profile: times, losses, powers.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Built-in baths: bench-3l, bench-6l, floor-28l. A file may start from one of "
          + "them with 'extends: bench-6l'. All figures are found by simulating the bath "
          + "without a controller."
    })
final class ProfileCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(
      paramLabel = "NAME|FILE",
      description = "A built-in bath, or a profile in a YAML file.")
  private String named;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for profile.html: the table, heating curves and the dry wall.")
  private Path out;

  @Override
  public Integer call() throws BadInputException {
    BathFacts facts = BathFacts.of(profile());
    spec.commandLine().getOut().print(FactsText.of(facts));
    if (out != null) {
      ProfileFolder.write(out, facts);
    }
    return ExitCode.HELD;
  }

  private BathProfile profile() throws BadInputException {
    Optional<BathProfile> builtIn = BuiltInBaths.byName(named);
    if (builtIn.isPresent()) {
      return builtIn.get();
    }
    boolean file = named.endsWith(".yaml") || named.endsWith(".yml");
    if (!file) {
      throw new BadInputException(
          "tankwright: no bath is called '"
              + named
              + "'; known: "
              + String.join(", ", BuiltInBaths.names())
              + "; or name a file that ends in .yaml or .yml");
    }
    try {
      return ProfileReader.read(Path.of(named));
    } catch (ScenarioException e) {
      throw new BadInputException(e.getMessage());
    }
  }
}
