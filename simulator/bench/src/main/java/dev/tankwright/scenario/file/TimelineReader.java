package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.loop.Action;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.key.EntryKeys;
import dev.tankwright.scenario.key.MomentKeys;
import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the timeline. */
public final class TimelineReader {
  private final Problems problems;
  private final MomentReader moments;
  private final ActionReader actions;
  private final Map<String, Named> names = new LinkedHashMap<>();
  private Optional<Repeat> before = Optional.empty();

  /** An entry that has a name. */
  private record Named(Place place, Optional<Repeat> repeat) {}

  /**
   * Makes a reader.
   *
   * @param brim volume that the tank holds at most, L
   * @param chemistry what is said of the chemistry where a start says nothing
   * @param durationMillis length of the run, ms
   */
  TimelineReader(
      DeviceProfile profile,
      String brim,
      Chemistry chemistry,
      long durationMillis,
      Problems problems) {
    this.problems = problems;
    moments = new MomentReader(durationMillis, problems);
    actions = new ActionReader(profile, brim, chemistry, problems);
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

  private Optional<TimelineEntry> entry(YamlNode node, boolean isFirst) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(
          node.place(),
          "a timeline entry needs a moment and an action, as in 'at: 5 s' and 'lid: open'; here is "
              + node.noun());
      return Optional.empty();
    }
    Fields fields = new Fields(keys, EntryKeys.BLOCK, problems);
    Optional<When> when = moments.when(fields, isFirst);
    String from = fields.text(MomentKeys.FROM).map(this::from).orElse("");
    if (from.isEmpty() && !fields.has(MomentKeys.AT) && !fields.has(MomentKeys.FROM)) {
      refuseEndless(keys.place(), "the entry before it", before);
    }
    Optional<Repeat> repeat = moments.repeat(fields, when);
    String name = name(fields, repeat).orElse("");
    before = repeat;
    Optional<Action> action = actions.read(fields);
    return when.isPresent() && action.isPresent()
        ? Optional.of(new TimelineEntry(name, from, when.get(), repeat, action.get(), keys.place()))
        : Optional.empty();
  }

  private void refuseEndless(Place place, String which, Optional<Repeat> repeat) {
    if (repeat.isPresent() && !repeat.get().isBounded()) {
      problems.add(
          place,
          "this entry waits for "
              + which
              + ", which is repeated without end; give that one 'times' or 'until', or wait for"
              + " another with 'from'");
    }
  }

  private String from(YamlNode.Text text) {
    String name = text.value();
    if (names.containsKey(name)) {
      refuseEndless(text.place(), Quote.of(name), names.get(name).repeat());
    } else if (!name.equals(TimelineEntry.START)) {
      List<String> known = new ArrayList<>(names.keySet());
      known.add(TimelineEntry.START);
      problems.add(
          text.place(),
          "no entry before this one is named " + Quote.of(name) + "; " + Nearest.hint(name, known));
    }
    return name;
  }

  private Optional<String> name(Fields fields, Optional<Repeat> repeat) {
    Optional<String> name = fields.line(MomentKeys.NAME);
    if (name.isEmpty()) {
      return name;
    }
    Place place = fields.text(MomentKeys.NAME).orElseThrow().place();
    if (name.get().equals(TimelineEntry.START)) {
      problems.add(place, "'start' is the start of the run; give this entry another name");
      return Optional.empty();
    }
    Named first = names.putIfAbsent(name.get(), new Named(place, repeat));
    if (first != null) {
      problems.add(
          place,
          "the name "
              + Quote.of(name.get())
              + " is already taken in "
              + first.place()
              + "; give each entry its own");
    }
    return name;
  }
}
