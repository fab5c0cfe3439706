package dev.tankwright.scenario;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Deed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads the timeline. */
final class TimelineReader {
  private static final List<String> MOMENTS = List.of("at", "on", "then");

  private final Problems problems;
  private final Values values;
  private final DeedReader deeds;

  /**
   * Makes a reader.
   *
   * @param brim volume that the tank holds at most, L
   */
  TimelineReader(DeviceProfile profile, String brim, Problems problems) {
    this.problems = problems;
    values = new Values(problems);
    deeds = new DeedReader(profile, brim, problems);
  }

  List<TimelineEntry> read(YamlNode node) {
    List<TimelineEntry> entries = new ArrayList<>();
    if (!(node instanceof YamlNode.Items items)) {
      problems.add(
          node.place(),
          "'timeline' needs a list of entries that begin with '- ', not " + node.noun());
      return entries;
    }
    for (int i = 0; i < items.items().size(); i++) {
      entry(items.items().get(i), i == 0).ifPresent(entries::add);
    }
    return entries;
  }

  private Optional<TimelineEntry> entry(YamlNode node, boolean first) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(
          node.place(),
          "a timeline entry needs a moment and a deed, as in 'at: 5 s' and 'lid: open'; here is "
              + node.noun());
      return Optional.empty();
    }
    Fields fields = new Fields(keys, "this timeline entry", ScenarioKeys.ENTRY, problems);
    Optional<When> when = when(fields, first);
    Optional<Deed> deed = deeds.read(fields);
    return when.isPresent() && deed.isPresent()
        ? Optional.of(new TimelineEntry(when.get(), deed.get(), keys.place()))
        : Optional.empty();
  }

  private Optional<When> when(Fields fields, boolean first) {
    List<String> given = MOMENTS.stream().filter(fields::has).toList();
    if (!given.equals(List.of("on"))) {
      fields.refuse("after", "goes only with 'on'; for a time after the entry before write 'then'");
    }
    if (given.size() != 1) {
      String text =
          given.isEmpty()
              ? "this entry has no moment; give it one of at, on, then"
              : "an entry has one moment, this one has " + String.join(" and ", given);
      problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
      return Optional.empty();
    }
    return switch (given.get(0)) {
      case "at" -> boxed(time(fields, "at")).map(When.At::new);
      case "on" -> on(fields);
      default -> then(fields, first);
    };
  }

  private Optional<When> on(Fields fields) {
    Optional<Phase> phase =
        fields.text("on").flatMap(text -> values.constant(text, "on", List.of(Phase.values())));
    OptionalLong delay = fields.has("after") ? time(fields, "after") : OptionalLong.of(0);
    return phase.isPresent() && delay.isPresent()
        ? Optional.of(new When.On(phase.get(), delay.getAsLong()))
        : Optional.empty();
  }

  private Optional<When> then(Fields fields, boolean first) {
    if (first) {
      fields.refuse("then", "has no entry before it to wait for; write 'at' in the first entry");
    }
    return boxed(time(fields, "then")).map(When.Then::new);
  }

  private OptionalLong time(Fields fields, String key) {
    Optional<YamlNode.Text> text = fields.text(key);
    return text.isEmpty()
        ? OptionalLong.empty()
        : values.millis(text.get(), key, 0, ScenarioReader.LONGEST_MILLIS);
  }

  private static Optional<Long> boxed(OptionalLong value) {
    return value.isPresent() ? Optional.of(value.getAsLong()) : Optional.empty();
  }
}
