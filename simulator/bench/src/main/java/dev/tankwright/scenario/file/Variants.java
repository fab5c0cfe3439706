package dev.tankwright.scenario.file;

import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.YamlNode;
import dev.tankwright.scenario.yaml.YamlText;
import dev.tankwright.scenario.yaml.YamlTree;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a scenario together with the one that it extends, which may extend another in turn. */
final class Variants {
  private static final String KEY = "extends";
  private static final int DEEPEST = 8;

  private final String file;
  private final Problems problems;
  private final Sources sources;
  private final FileChoice files;
  private final List<Path> chain = new ArrayList<>();

  /**
   * Makes one for one scenario.
   *
   * @param file the scenario's file as problems name it
   * @param sources takes the content of every file that is read
   */
  Variants(String file, Problems problems, Sources sources) {
    this.problems = problems;
    this.sources = sources;
    files = new FileChoice(file, problems);
    this.file = file;
  }

  /**
   * The scenario with all that it extends, without the key {@code extends}.
   *
   * @throws ScenarioException when a file that is extended is not there, or is no YAML
   */
  YamlNode resolve(YamlNode root) throws ScenarioException {
    if (!(root instanceof YamlNode.Keys keys)) {
      return root;
    }
    Optional<YamlNode.Pair> link =
        keys.pairs().stream().filter(pair -> pair.key().value().equals(KEY)).findFirst();
    if (link.isEmpty()) {
      return root;
    }
    YamlNode.Pair pair = link.get();
    YamlNode.Keys own = without(keys, pair);
    refuseNameless(own, pair.key().place());
    if (!(pair.value() instanceof YamlNode.Text text) || text.isNothing()) {
      throw problems.stop(
          pair.key().place(),
          "'extends' needs the name of a scenario file, as in 'extends: first-cycle.yaml'");
    }
    YamlNode base = resolve(read(text));
    if (!(base instanceof YamlNode.Keys inherited)) {
      throw problems.stop(
          base.place(), "a scenario begins with 'scenario:' and its title; here is " + base.noun());
    }
    return Merge.of(inherited, own);
  }

  private static YamlNode.Keys without(YamlNode.Keys keys, YamlNode.Pair pair) {
    List<YamlNode.Pair> rest = new ArrayList<>(keys.pairs());
    rest.remove(pair);
    return new YamlNode.Keys(rest, keys.place());
  }

  private void refuseNameless(YamlNode.Keys own, Place place) {
    if (own.pairs().stream().noneMatch(pair -> pair.key().value().equals("scenario"))) {
      problems.add(
          place,
          "a scenario that extends another needs a title of its own; for example 'scenario: First"
              + " cycle, lid opened'");
    }
  }

  private YamlNode read(YamlNode.Text text) throws ScenarioException {
    if (!FileChoice.isFileName(text.value())) {
      throw problems.stop(
          text.place(),
          "extends is "
              + Quote.of(text.value())
              + "; it must be a file that ends in .yaml or .yml");
    }
    Optional<Path> named = files.path(text, KEY);
    if (named.isEmpty()) {
      throw problems.stop();
    }
    Path path = named.get().normalize();
    refuseLoop(path, text.place());
    byte[] content = content(path, text.place());
    sources.add(content);
    Problems inFile = new Problems(path.toString());
    return YamlTree.read(YamlText.decode(content, inFile), path.toString(), inFile);
  }

  private void refuseLoop(Path path, Place place) throws ScenarioException {
    if (chain.isEmpty()) {
      chain.add(Path.of(file));
    }
    boolean seen = chain.stream().anyMatch(earlier -> earlier.normalize().equals(path));
    chain.add(path);
    String way = String.join(" -> ", chain.stream().map(Path::toString).toList());
    if (seen) {
      throw problems.stop(
          place, "extends leads back to a file that is being read: " + way + "; break the loop");
    }
    if (chain.size() > DEEPEST) {
      throw problems.stop(
          place, "more than " + DEEPEST + " files extend each other: " + way + "; use fewer");
    }
  }

  private byte[] content(Path path, Place place) throws ScenarioException {
    try {
      byte[] content = FileBytes.read(path, "scenario");
      if (content.length > FileBytes.LARGEST_BYTES) {
        throw problems.stop(place, FileBytes.tooLarge(content.length, "scenario"));
      }
      return content;
    } catch (ScenarioException e) {
      for (Problem problem : e.problems()) {
        problems.add(place, "the file that is extended cannot be used: " + problem);
      }
      throw problems.stop();
    }
  }
}
