package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Values;
import dev.tankwright.scenario.quantity.AmountParser;
import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.TextFault;
import dev.tankwright.scenario.yaml.YamlNode;
import dev.tankwright.scenario.yaml.YamlText;
import dev.tankwright.scenario.yaml.YamlTree;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads bath profiles. A file that cannot be used gives one {@link ScenarioException} with
 * everything that is wrong, each with its place and the valid range. Stateless and thread-safe.
 */
public final class ProfileReader {
  private static final String NAME = "profile";

  private final Problems problems;
  private final Values values;

  private ProfileReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  /**
   * Reads a file.
   *
   * @param path the file; problems name it as it is given here
   * @throws ScenarioException when it is not there, cannot be read, or is not a valid profile
   */
  public static BathProfile read(Path path) throws ScenarioException {
    return read(path.toString(), FileBytes.read(path, NAME));
  }

  /**
   * Reads a file's content.
   *
   * @param fileName what problems call the file
   * @param content the file's bytes
   * @throws ScenarioException when it is not a valid profile
   */
  public static BathProfile read(String fileName, byte[] content) throws ScenarioException {
    Problems problems = new Problems(fileName);
    if (content.length > FileBytes.LARGEST_BYTES) {
      throw problems.stop(Place.START, FileBytes.tooLarge(content.length, NAME));
    }
    YamlNode root = YamlTree.read(YamlText.decode(content, problems), problems);
    return new ProfileReader(problems).document(root);
  }

  private BathProfile document(YamlNode root) throws ScenarioException {
    if (!(root instanceof YamlNode.Keys keys)) {
      throw problems.stop(
          root.place(), "a profile begins with 'profile:' and its name; here is " + root.noun());
    }
    Fields fields = new Fields(keys, ProfileKeys.BLOCK, problems);
    fields.lacksRequired();
    Optional<String> name = fields.line(ProfileKeys.PROFILE);
    ProfileBuilder builder = new ProfileBuilder();
    base(fields, builder);
    for (ProfileKey key : ProfileKey.values()) {
      fields.text(key.key()).ifPresent(text -> value(key, text, builder));
    }
    problems.throwIfAny();
    new ProfileRules(fields, builder, problems).check();
    problems.throwIfAny();
    return builder.build(name.orElseThrow());
  }

  /** Starts from the bath that is extended, or from the estimates' defaults. */
  private void base(Fields fields, ProfileBuilder builder) {
    if (fields.has(ProfileKeys.EXTENDS)) {
      fields.word(ProfileKeys.EXTENDS).flatMap(BuiltInBaths::byName).ifPresent(builder::putAll);
      return;
    }
    for (ProfileKey key : ProfileKey.values()) {
      if (key.isEstimate()) {
        builder.put(key, key.standard());
      } else if (!fields.has(key.key())) {
        problems.add(
            fields.place(),
            "the profile lacks the key '"
                + key.key()
                + "' ("
                + key.type().told()
                + "); give it, or name a bath to start from, as in 'extends: "
                + BuiltInBaths.USUAL
                + "'");
      }
    }
  }

  private void value(ProfileKey key, YamlNode.Text text, ProfileBuilder builder) {
    try {
      // Read once here only so that the range is named even where no number stands.
      AmountParser.parse(text.value(), key.type().dimension(), key.key());
    } catch (TextFault e) {
      problems.add(text.at(e.offset()), e.getMessage() + "; it must lie from " + key.type().told());
      return;
    }
    values
        .amount(text, key.key(), key.type().dimension(), key.type().least(), key.type().most())
        .ifPresent(amount -> builder.put(key, amount.value()));
  }
}
