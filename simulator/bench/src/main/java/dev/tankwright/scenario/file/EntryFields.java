package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import java.util.LinkedHashMap;
import java.util.Map;

/** Entries of a timeline as scenario files write them: keys and values, in order. */
final class EntryFields {
  private final Map<String, String> fields = new LinkedHashMap<>();

  private EntryFields() {}

  static Map<String, String> of(TimelineEntry entry) {
    EntryFields own = new EntryFields();
    own.when(entry.when());
    if (!entry.name().isEmpty()) {
      own.fields.put("name", ScenarioWriter.quoted(entry.name()));
    }
    // An entry at a moment waits for none, whatever it names.
    if (!entry.from().isEmpty() && !(entry.when() instanceof When.At)) {
      own.fields.put("from", ScenarioWriter.quoted(entry.from()));
    }
    entry.repeat().ifPresent(own::repeat);
    own.fields.putAll(ActionFields.of(entry.action()));
    return own.fields;
  }

  private void when(When when) {
    if (when instanceof When.At at) {
      time("at", at.millis());
    } else if (when instanceof When.Later later) {
      time("later", later.delayMillis());
    } else if (when instanceof When.On on) {
      fields.put("on", on.phase().name());
      after(on.delayMillis());
    } else if (when instanceof When.Crossing crossing) {
      fields.put("when", ScenarioWriter.quoted(crossing.condition().toString()));
      after(crossing.delayMillis());
    } else {
      throw new IllegalArgumentException("no text is known for " + when);
    }
  }

  private void after(long millis) {
    if (millis != 0) {
      time("after", millis);
    }
  }

  private void repeat(Repeat repeat) {
    time("every", repeat.everyMillis());
    repeat.times().ifPresent(times -> fields.put("times", Long.toString(times)));
    repeat.untilMillis().ifPresent(millis -> time("until", millis));
  }

  private void time(String key, long millis) {
    fields.put(key, millis + " ms");
  }
}
