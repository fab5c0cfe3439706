package dev.tankwright.scenario.file;

import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.key.FileKeys;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Merges a scenario into the one that it extends: a single value replaces the one before; blocks
 * are merged key by key; an item of a list takes the place of the one with the same name, or is
 * appended.
 */
final class Merge {
  private Merge() {}

  static YamlNode.Keys of(YamlNode.Keys base, YamlNode.Keys own) {
    return of(base, own, FileKeys.BLOCK);
  }

  private static YamlNode.Keys of(YamlNode.Keys base, YamlNode.Keys own, KeyBlock block) {
    List<YamlNode.Pair> pairs = new ArrayList<>();
    Set<YamlNode.Pair> used = new HashSet<>();
    for (YamlNode.Pair inherited : base.pairs()) {
      String name = name(inherited, block);
      Optional<YamlNode.Pair> other =
          own.pairs().stream()
              .filter(pair -> name(pair, block).equals(name))
              .filter(pair -> !used.contains(pair))
              .findFirst();
      other.ifPresent(used::add);
      pairs.add(other.map(pair -> merged(inherited, pair, name)).orElse(inherited));
    }
    own.pairs().stream().filter(pair -> !used.contains(pair)).forEach(pairs::add);
    return new YamlNode.Keys(pairs, own.place());
  }

  /** A key by the name that it has now. */
  private static String name(YamlNode.Pair pair, KeyBlock block) {
    return block.nameNow(pair.key().value());
  }

  private static YamlNode.Pair merged(YamlNode.Pair base, YamlNode.Pair own, String name) {
    YamlNode value = own.value();
    if (base.value() instanceof YamlNode.Keys inherited && value instanceof YamlNode.Keys keys) {
      value = of(inherited, keys, ScenarioKeys.under(name));
    } else if (base.value() instanceof YamlNode.Items inherited
        && value instanceof YamlNode.Items items) {
      value = items(inherited, items);
    }
    return new YamlNode.Pair(own.key(), value);
  }

  private static YamlNode items(YamlNode.Items base, YamlNode.Items own) {
    List<YamlNode> items = new ArrayList<>(base.items());
    Set<Integer> replaced = new HashSet<>();
    for (YamlNode item : own.items()) {
      int at = position(base.items(), name(item));
      // A second item of the same name is appended, so that the reader finds the twins.
      if (at >= 0 && replaced.add(at)) {
        items.set(at, item);
      } else {
        items.add(item);
      }
    }
    return new YamlNode.Items(items, own.place());
  }

  private static int position(List<YamlNode> items, Optional<String> name) {
    for (int i = 0; name.isPresent() && i < items.size(); i++) {
      if (name(items.get(i)).equals(name)) {
        return i;
      }
    }
    return -1;
  }

  private static Optional<String> name(YamlNode item) {
    if (!(item instanceof YamlNode.Keys keys)) {
      return Optional.empty();
    }
    return keys.pairs().stream()
        .filter(pair -> pair.key().value().equals("name"))
        .filter(pair -> pair.value() instanceof YamlNode.Text)
        .map(pair -> ((YamlNode.Text) pair.value()).value())
        .findFirst();
  }
}
