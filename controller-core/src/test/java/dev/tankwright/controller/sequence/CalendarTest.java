package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Parameter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Drain at the end of the working day, foil check each quarter: common practice, no source. */
class CalendarTest {
  private final NoticeRing ring = new NoticeRing(8);
  private final DeviceProfile profile =
      DeviceProfile.sixLitre()
          .with(Parameter.WORKING_DAY, 1_000)
          .with(Parameter.FOIL_INTERVAL, 2_000);
  private final Calendar calendar = new Calendar(profile, new Journal(ring));

  @Test
  @DisplayName("a foil check is due after its interval and after each check begins anew")
  void foil() {
    scan(1_999);
    assertFalse(calendar.isFoilDue());
    scan(1);
    assertTrue(calendar.isFoilDue());
    scan(5_000);
    assertEquals(List.of(NoticeKind.FOIL_DUE), noted());
    calendar.foilChecked();
    assertFalse(calendar.isFoilDue());
    calendar.pass(1_999);
    assertFalse(calendar.isFoilDue());
    calendar.pass(1);
    assertTrue(calendar.isFoilDue());
    assertEquals(List.of(NoticeKind.FOIL_DUE), noted());
  }

  @Test
  @DisplayName("a day without a cycle never ends; with one it ends and is announced once")
  void day() {
    calendar.pass(1_500);
    assertFalse(calendar.isDrainDue());
    calendar.cycleStarted();
    scan(500);
    calendar.cycleStarted();
    scan(499);
    assertFalse(calendar.isDrainDue());
    scan(1);
    assertTrue(calendar.isDrainDue());
    scan(100);
    assertEquals(List.of(NoticeKind.DRAIN_DUE, NoticeKind.FOIL_DUE), sorted());
    calendar.drained();
    assertFalse(calendar.isDrainDue());
    calendar.pass(5_000);
    assertFalse(calendar.isDrainDue(), "the next day begins with its first cycle");
    calendar.cycleStarted();
    calendar.pass(999);
    assertFalse(calendar.isDrainDue());
    calendar.pass(1);
    assertTrue(calendar.isDrainDue());
  }

  @Test
  @DisplayName("seconds are counted whole, whatever the length of a scan")
  void wholeSeconds() {
    for (int ms = 0; ms < 1_999_990; ms += 70) {
      calendar.scan(70);
    }
    assertTrue(calendar.isFoilDue(), "2000.04 s in steps of 70 ms");
    calendar.foilChecked();
    for (int scan = 0; scan < 28_570; scan++) {
      calendar.scan(70);
    }
    assertFalse(calendar.isFoilDue(), "0.04 s and 1999.90 s more");
    calendar.scan(70);
    assertTrue(calendar.isFoilDue(), "0.04 s and 1999.97 s more are 2000.01 s");
  }

  @Test
  @DisplayName("the longest time without power that a board can tell makes both due")
  void longest() {
    calendar.cycleStarted();
    calendar.pass(Integer.MAX_VALUE);
    assertTrue(calendar.isFoilDue() && calendar.isDrainDue());
    calendar.pass(Integer.MAX_VALUE);
    assertTrue(calendar.isFoilDue() && calendar.isDrainDue());
  }

  private void scan(int seconds) {
    for (int ms = 0; ms < seconds * 1_000; ms += 100) {
      calendar.scan(100);
    }
  }

  private List<NoticeKind> sorted() {
    return noted().stream().sorted().toList();
  }

  private List<NoticeKind> noted() {
    List<NoticeKind> kinds = new ArrayList<>();
    ring.drain((kind, first, second, uptimeMs) -> kinds.add(kind));
    return kinds;
  }
}
