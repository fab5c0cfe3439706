package dev.tankwright.scenario.file;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.profile.ProfileReader;
import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.YamlNode;
import java.nio.file.Path;
import java.util.Optional;

/** Finds the bath that a scenario names: one that is built in, or a profile in a file beside it. */
final class ProfileChoice {
  private static final String KEY = "profile";

  private final FileChoice files;
  private final Problems problems;
  private final Sources sources;

  /**
   * Makes a choice for one scenario.
   *
   * @param files finds the files that the scenario names
   * @param sources takes the content of a profile's file
   */
  ProfileChoice(FileChoice files, Problems problems, Sources sources) {
    this.files = files;
    this.problems = problems;
    this.sources = sources;
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
    if (!FileChoice.isFileName(name)) {
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
    return files.path(text, KEY).flatMap(path -> file(path, text.place()));
  }

  private Optional<BathProfile> file(Path path, Place place) {
    try {
      byte[] content = FileBytes.read(path, "profile");
      sources.add(content);
      return Optional.of(ProfileReader.read(path.toString(), content));
    } catch (ScenarioException e) {
      e.problems().forEach(p -> problems.add(place, "the profile cannot be used: " + p));
      return Optional.empty();
    }
  }
}
