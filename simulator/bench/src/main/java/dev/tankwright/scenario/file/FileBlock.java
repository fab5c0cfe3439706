package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.loop.Action;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.Values;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.YamlNode;
import dev.tankwright.scenario.yaml.YamlText;
import dev.tankwright.scenario.yaml.YamlTree;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * Keys and values of a file of another kind than a scenario, read by the same rules: what is wrong
 * is collected with its place, unknown keys and keys that are there twice among it, and thrown by
 * {@link #finish}. What cannot be read is reported and empty. Not thread-safe.
 */
public final class FileBlock {
  private static final KeyBlock FAULT = ActionKeys.BLOCK.called("this fault");

  private final Fields fields;
  private final Problems problems;
  private final Values values;

  private FileBlock(YamlNode.Keys keys, String name, List<String> known, Problems problems) {
    fields = new Fields(keys, KeyBlock.plain(name, known), problems);
    this.problems = problems;
    values = new Values(problems);
  }

  /** What a quantity can be. */
  public enum Kind {
    /** In °C. */
    TEMPERATURE(Dimension.TEMPERATURE),
    /** As a share of 1. */
    SHARE(Dimension.FRACTION),
    /** In s. */
    TIME(Dimension.TIME);

    private final Dimension dimension;

    Kind(Dimension dimension) {
      this.dimension = dimension;
    }
  }

  /**
   * A file's content.
   *
   * @param block its outermost block
   * @param text all of it
   */
  public record Document(FileBlock block, String text) {}

  /**
   * Reads a file.
   *
   * @param path the file; problems name it as it is given here
   * @param noun what kind of file it should be
   * @param known its keys, the one it begins with first
   * @throws ScenarioException when it is not there, cannot be read, or does not hold keys
   */
  public static Document read(Path path, String noun, List<String> known) throws ScenarioException {
    Problems problems = new Problems(path.toString());
    byte[] content = FileBytes.read(path, noun);
    if (content.length > FileBytes.LARGEST_BYTES) {
      throw problems.stop(Place.START, FileBytes.tooLarge(content.length, noun));
    }
    YamlNode root = YamlTree.read(YamlText.decode(content, problems), problems);
    if (root instanceof YamlNode.Keys keys) {
      String text = new String(content, StandardCharsets.UTF_8);
      return new Document(new FileBlock(keys, "the " + noun, known, problems), text);
    }
    String begin = " begins with '" + known.get(0) + ":' and its title; here is ";
    throw problems.stop(root.place(), "a " + noun + begin + root.noun());
  }

  /** Throws everything that was found to be wrong, if anything was. */
  public void finish() throws ScenarioException {
    problems.throwIfAny();
  }

  /** Old names of keys in what was read so far. */
  public List<Problem> warnings() {
    return problems.warnings();
  }

  /** Whether a key is there. */
  public boolean has(String key) {
    return fields.has(key);
  }

  /** Whether the value of a key is a single one. */
  public boolean isText(String key) {
    return fields.node(key).map(node -> node instanceof YamlNode.Text).orElse(false);
  }

  /** Reports something about a key's value, or about the block when the key is absent. */
  public void report(String key, String message) {
    Place place = fields.node(key).map(YamlNode::place).orElseGet(fields::place);
    problems.add(place, message);
  }

  /** Reports an absent key. */
  public void needs(String key, String example) {
    fields.lacks(key, example);
  }

  /** A line of text. */
  public Optional<String> line(String key, int longest) {
    return fields.text(key).flatMap(text -> values.line(text, key, longest));
  }

  /** One of some words. */
  public Optional<String> word(String key, List<String> words) {
    return fields.text(key).flatMap(text -> values.word(text, key, words));
  }

  /** A whole number. */
  public OptionalLong whole(String key, long least, long most) {
    Optional<YamlNode.Text> text = fields.text(key);
    if (text.isEmpty()) {
      return OptionalLong.empty();
    }
    return values.whole(text.get(), key, least, most);
  }

  /** A quantity in the base unit of its kind. */
  public OptionalDouble quantity(String key, Kind kind, String least, String most) {
    return fields
        .text(key)
        .map(text -> quantity(text, key, kind, least, most))
        .orElse(OptionalDouble.empty());
  }

  /** A quantity that is one of {@link #texts} of a key, in the base unit of its kind. */
  public OptionalDouble quantityOf(String value, String key, Kind kind, String least, String most) {
    Place place = fields.node(key).map(YamlNode::place).orElseGet(fields::place);
    return quantity(new YamlNode.Text(value, place, -1, true), key, kind, least, most);
  }

  private OptionalDouble quantity(
      YamlNode.Text text, String subject, Kind kind, String least, String most) {
    Optional<Amount> amount = values.amount(text, subject, kind.dimension, least, most);
    return amount.isPresent() ? OptionalDouble.of(amount.get().value()) : OptionalDouble.empty();
  }

  /**
   * Two quantities, as in {@code 10 °C to 35 °C}, the lower one first.
   *
   * @return both, or nothing when they were reported
   */
  public List<Double> range(String key, Kind kind, String least, String most, String example) {
    Optional<YamlNode.Text> text = fields.text(key);
    if (text.isEmpty()) {
      return List.of();
    }
    String[] ends = text.get().value().split(" to ", -1);
    if (ends.length != 2) {
      String must = "; it must be a range as in '" + key + ": " + example + "'";
      report(key, key + " is " + Quote.of(text.get().value()) + must);
      return List.of();
    }
    OptionalDouble low = quantity(part(text.get(), ends[0]), key, kind, least, most);
    OptionalDouble high = quantity(part(text.get(), ends[1]), key, kind, least, most);
    if (low.isEmpty() || high.isEmpty()) {
      return List.of();
    }
    if (low.getAsDouble() > high.getAsDouble()) {
      report(key, key + " runs from high to low; give the lower end first");
      return List.of();
    }
    return List.of(low.getAsDouble(), high.getAsDouble());
  }

  private static YamlNode.Text part(YamlNode.Text whole, String value) {
    return new YamlNode.Text(value.strip(), whole.place(), -1, whole.plain());
  }

  /** The values of a list of single values, or of a single one; empty when the key is absent. */
  public List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    Optional<YamlNode> node = fields.node(key);
    List<YamlNode> items =
        node.isPresent() && node.get() instanceof YamlNode.Items list
            ? list.items()
            : node.map(List::of).orElse(List.of());
    for (YamlNode item : items) {
      if (item instanceof YamlNode.Text text && !text.isNothing() && !text.value().isBlank()) {
        texts.add(text.value().strip());
      } else {
        problems.add(item.place(), "'" + key + "' needs single values; here is " + item.noun());
      }
    }
    return texts;
  }

  /** The block under a key; empty when the key is absent or the value was reported. */
  public Optional<FileBlock> block(String key, List<String> known) {
    Optional<YamlNode> node = fields.node(key);
    if (node.isPresent() && node.get() instanceof YamlNode.Keys keys) {
      return Optional.of(new FileBlock(keys, "'" + key + "'", known, problems));
    }
    node.ifPresent(n -> report(key, "'" + key + "' needs keys with values, not " + n.noun()));
    return Optional.empty();
  }

  /**
   * Actions in a list, each as a timeline's entry without its moment. Single values of the list are
   * handed to {@code words}.
   *
   * @param brimLitres what the tank holds at most, L
   * @param words takes a single value of the list; tells what it stands for, nothing when unknown
   */
  public List<Action> actions(String key, DeviceProfile profile, double brimLitres, Words words) {
    Optional<YamlNode> node = fields.node(key);
    List<Action> actions = new ArrayList<>();
    if (node.isEmpty()) {
      return actions;
    }
    List<YamlNode> items =
        node.get() instanceof YamlNode.Items list ? list.items() : List.of(node.get());
    ActionReader reader =
        new ActionReader(profile, Amount.plain(brimLitres), Chemistry.UNSTATED, problems);
    for (YamlNode item : items) {
      if (item instanceof YamlNode.Keys keys) {
        Fields entry = new Fields(keys, FAULT, problems);
        reader.read(entry).ifPresent(actions::add);
      } else if (item instanceof YamlNode.Text text && !words.of(text.value()).isEmpty()) {
        actions.addAll(words.of(text.value()));
      } else {
        problems.add(item.place(), words.wanted() + "; here is " + item.noun());
      }
    }
    return actions;
  }

  /** Single values that stand for actions. */
  public interface Words {
    /** What a word stands for; nothing when it is unknown. */
    List<Action> of(String word);

    /** What a person should write. */
    String wanted();
  }

  /** Requirements as in a scenario; none when the key is absent. */
  public List<Requirement> requirements(String key, long durationMillis) {
    return fields
        .node(key)
        .map(new RequirementsReader(durationMillis, problems)::read)
        .orElse(List.of());
  }
}
