package dev.tankwright.scenario.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Builds the tree of one YAML document from the parser's events. What scenario files have no use
 * for (anchors, aliases, tags, merge keys, keys that are no text, deep nesting, a second document)
 * is refused as soon as it is met, so that no file can make the tree larger than itself.
 */
public final class YamlTree {
  private static final int DEEPEST = 8;

  private final String file;
  private final Problems problems;
  private final ParserImpl parser;

  private YamlTree(String text, String file, Problems problems) {
    this.file = file;
    this.problems = problems;
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(text.length() + 1).build();
    parser = new ParserImpl(settings, new StreamReader(settings, text));
  }

  /** The document's root. */
  public static YamlNode read(String text, Problems problems) throws ScenarioException {
    return read(text, "", problems);
  }

  /**
   * The root of a document that another file names.
   *
   * @param file what the places in it call the file; empty for the file that is read
   */
  public static YamlNode read(String text, String file, Problems problems)
      throws ScenarioException {
    return new YamlTree(text, file, problems).document();
  }

  private YamlNode document() throws ScenarioException {
    next();
    Event start = next();
    if (start.getEventId() == Event.ID.StreamEnd) {
      throw problems.stop(
          Place.START, "the file is empty; a scenario begins with 'scenario:' and its title");
    }
    YamlNode root = node(next(), 1);
    next();
    Event end = next();
    if (end.getEventId() != Event.ID.StreamEnd) {
      throw problems.stop(
          place(end.getStartMark()), "a second document begins here; a file holds one scenario");
    }
    return root;
  }

  private YamlNode node(Event event, int depth) throws ScenarioException {
    Place place = place(event.getStartMark());
    refuseExtras(event, place);
    if (event instanceof ScalarEvent scalar) {
      return text(scalar, place);
    }
    if (depth > DEEPEST) {
      throw problems.stop(
          place, "nested deeper than " + DEEPEST + " levels; a scenario needs no more than three");
    }
    return event.getEventId() == Event.ID.SequenceStart ? items(place, depth) : keys(place, depth);
  }

  private YamlNode.Items items(Place place, int depth) throws ScenarioException {
    List<YamlNode> items = new ArrayList<>();
    Event event = next();
    while (event.getEventId() != Event.ID.SequenceEnd) {
      items.add(node(event, depth + 1));
      event = next();
    }
    return new YamlNode.Items(items, place);
  }

  private YamlNode.Keys keys(Place place, int depth) throws ScenarioException {
    List<YamlNode.Pair> pairs = new ArrayList<>();
    Event event = next();
    while (event.getEventId() != Event.ID.MappingEnd) {
      YamlNode key = node(event, depth + 1);
      if (!(key instanceof YamlNode.Text name)) {
        throw problems.stop(key.place(), "a key must be a word, not " + key.noun());
      }
      if (name.plain() && name.value().equals("<<")) {
        throw problems.stop(name.place(), "merge keys are not used here; write the keys out");
      }
      pairs.add(new YamlNode.Pair(name, node(next(), depth + 1)));
      event = next();
    }
    return new YamlNode.Keys(pairs, place);
  }

  private void refuseExtras(Event event, Place place) throws ScenarioException {
    boolean anchored = event instanceof NodeEvent node && node.getAnchor().isPresent();
    if (anchored || event instanceof AliasEvent) {
      throw problems.stop(
          place, "anchors (&) and aliases (*) are not used here; write the value out");
    }
    boolean tagged =
        (event instanceof ScalarEvent scalar && scalar.getTag().isPresent())
            || (event instanceof CollectionStartEvent block && block.getTag().isPresent());
    if (tagged) {
      throw problems.stop(place, "tags (!) are not used here; write the value alone");
    }
  }

  private YamlNode.Text text(ScalarEvent scalar, Place place) throws ScenarioException {
    String value = scalar.getValue();
    refuseEscaped(value, place);
    int quotes = scalar.isPlain() ? 0 : 1;
    Place end = place(scalar.getEndMark());
    boolean asWritten =
        end.line() == place.line()
            && end.column() - place.column()
                == value.codePointCount(0, value.length()) + 2 * quotes;
    return new YamlNode.Text(value, place, asWritten ? quotes : -1, scalar.isPlain());
  }

  /** Quoted text can hold by an escape what the file itself may not hold. */
  private void refuseEscaped(String value, Place place) throws ScenarioException {
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      boolean paired =
          Character.isHighSurrogate(c)
              && i + 1 < value.length()
              && Character.isLowSurrogate(value.charAt(i + 1));
      if (paired) {
        i++;
      } else if (c != '\n' && (YamlText.isUnseen(c) || Character.isSurrogate(c))) {
        throw problems.stop(
            place, "this text holds " + YamlText.code(c) + " by an escape; leave it out");
      }
    }
  }

  private Event next() throws ScenarioException {
    try {
      return parser.next();
    } catch (MarkedYamlEngineException e) {
      boolean earlier = e.getContextMark().isPresent() && YamlAdvice.isBegunEarlier(e.getProblem());
      Optional<Mark> mark = earlier ? e.getContextMark() : e.getProblemMark();
      throw problems.stop(place(mark), YamlAdvice.of(e.getProblem()));
    } catch (YamlEngineException e) {
      throw problems.stop(Place.START, YamlAdvice.of(e.getMessage()));
    }
  }

  private Place place(Optional<Mark> mark) {
    return mark.map(m -> new Place(file, m.getLine() + 1, m.getColumn() + 1)).orElse(Place.START);
  }
}
