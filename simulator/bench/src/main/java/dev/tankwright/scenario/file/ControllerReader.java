package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Values;
import dev.tankwright.scenario.key.ControllerKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads what differs from the standard profile of the controller. */
final class ControllerReader {
  private final Problems problems;
  private final Values values;
  private boolean shortTime;

  ControllerReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  private record Change(Parameter parameter, int value, Place place) {}

  DeviceProfile read(YamlNode node) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(node.place(), "'controller' needs keys with values, not " + node.noun());
      return DeviceProfile.sixLitre();
    }
    Fields fields = new Fields(keys, ControllerKeys.BLOCK, problems);
    shortTime = fields.word(ControllerKeys.SHORT_TIME).map("on"::equals).orElse(false);
    List<Change> changes = new ArrayList<>();
    for (Parameter parameter : Parameter.values()) {
      fields.text(parameter.key()).flatMap(t -> change(parameter, t)).ifPresent(changes::add);
    }
    return apply(changes);
  }

  private Optional<Change> change(Parameter parameter, YamlNode.Text text) {
    Key key = ControllerKeys.of(parameter);
    KeyType.Quantity type = (KeyType.Quantity) key.type();
    String least =
        shortTime
            ? ControllerKeys.inFile(parameter.unit(), parameter.shortMinimum())
            : type.least();
    Optional<Amount> amount = values.amount(text, key.name(), type.dimension(), least, type.most());
    if (amount.isEmpty()) {
      return Optional.empty();
    }
    OptionalLong whole = values.whole(text, key.name(), amount.get(), type.perUnit());
    return whole.isEmpty()
        ? Optional.empty()
        : Optional.of(new Change(parameter, Math.toIntExact(whole.getAsLong()), text.place()));
  }

  /** Makes the changes in whichever order the profile's rules between parameters accept. */
  private DeviceProfile apply(List<Change> changes) {
    DeviceProfile profile = DeviceProfile.sixLitre();
    if (shortTime) {
      profile = profile.withShortTime();
    }
    Map<Change, String> misfits = new LinkedHashMap<>();
    List<Change> waiting = changes;
    int before;
    do {
      before = waiting.size();
      misfits.clear();
      for (Change change : waiting) {
        try {
          profile = profile.with(change.parameter(), change.value());
        } catch (IllegalArgumentException e) {
          misfits.put(change, e.getMessage());
        }
      }
      waiting = List.copyOf(misfits.keySet());
    } while (!waiting.isEmpty() && waiting.size() < before);
    misfits.forEach((change, misfit) -> problems.add(change.place(), misfit));
    return profile;
  }
}
