package dev.tankwright.scenario;

import dev.tankwright.plant.BathProfile;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Finds the bath that a scenario names: one that is built in, or a profile in a file beside it. */
final class ProfileChoice {
  private static final String KEY = "profile";

  private final String scenarioFile;
  private final Problems problems;

  /**
   * Makes a choice for one scenario.
   *
   * @param scenarioFile the scenario's file; paths of profiles begin in its folder
   */
  ProfileChoice(String scenarioFile, Problems problems) {
    this.scenarioFile = scenarioFile;
    this.problems = problems;
  }

  /** The bath; the usual one where none is named or the named one was reported. */
  BathProfile read(Fields fields) {
    return fields
        .text(KEY)
        .flatMap(this::named)
        .or(() -> BuiltInBaths.byName(BuiltInBaths.USUAL))
        .orElseThrow();
  }

  private Optional<BathProfile> named(YamlNode.Text text) {
    String name = text.value();
    if (!name.endsWith(".yaml") && !name.endsWith(".yml")) {
      Optional<BathProfile> bath = BuiltInBaths.byName(name);
      if (bath.isEmpty()) {
        String hint = Nearest.hint(name, BuiltInBaths.names());
        problems.add(
            text.place(),
            "unknown profile "
                + Quote.of(name)
                + "; "
                + hint
                + "; or name a file that ends in .yaml or .yml");
      }
      return bath;
    }
    return file(text);
  }

  private Optional<BathProfile> file(YamlNode.Text text) {
    try {
      Path path = Path.of(text.value());
      if (path.isAbsolute()) {
        problems.add(
            text.place(),
            "profile names the file "
                + Quote.of(text.value())
                + " from the root; name it relative to the scenario's folder");
        return Optional.empty();
      }
      return Optional.of(ProfileReader.read(Path.of(scenarioFile).resolveSibling(path)));
    } catch (InvalidPathException e) {
      problems.add(text.place(), "profile is " + Quote.of(text.value()) + ", which names no file");
    } catch (ScenarioException e) {
      e.problems()
          .forEach(p -> problems.add(text.place(), "the profile cannot be used: " + p.toString()));
    }
    return Optional.empty();
  }
}
