package dev.tankwright.scenario.run;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.TimelineEntry;
import java.util.ArrayList;
import java.util.List;

/** Marks actions and events of one run on its time axis. */
final class MarkLog implements RunListener {
  private final List<Mark> marks = new ArrayList<>();

  MarkLog(Contents contents) {
    String text = contents.toString();
    if (!text.isEmpty()) {
      marks.add(new Mark(0, Mark.Kind.ACTION, text));
    }
  }

  @Override
  public void action(TimelineEntry entry, long millis) {
    marks.add(new Mark(millis, Mark.Kind.ACTION, entry.text()));
  }

  void event(CycleEvent event, long millis) {
    EventMarks.of(event, millis).ifPresent(marks::add);
  }

  /** All marks, in the order of time. */
  List<Mark> marks() {
    return marks;
  }
}
