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
  private final Dues dues = new Dues();
  private final Calendar calendar = new Calendar(profile, dues, new Journal(ring));

  @Test
  @DisplayName("a foil check is due after its interval and after each check begins anew")
  void foil() {
    scan(1_999);
    assertFalse(isFoilDue());
    scan(1);
    assertTrue(isFoilDue());
    scan(5_000);
    assertEquals(List.of(NoticeKind.FOIL_DUE), noted());
    calendar.foilChecked();
    assertFalse(isFoilDue());
    calendar.pass(1_999);
    assertFalse(isFoilDue());
    calendar.pass(1);
    assertTrue(isFoilDue());
    assertEquals(List.of(NoticeKind.FOIL_DUE), noted());
  }

  @Test
  @DisplayName("a day without a cycle never ends; with one it ends and is announced once")
  void day() {
    calendar.pass(1_500);
    assertFalse(isDrainDue());
    calendar.cycleStarted();
    scan(500);
    calendar.cycleStarted();
    scan(499);
    assertFalse(isDrainDue());
    scan(1);
    assertTrue(isDrainDue());
    scan(100);
    assertEquals(List.of(NoticeKind.DRAIN_DUE, NoticeKind.FOIL_DUE), sorted());
    calendar.drained();
    assertFalse(isDrainDue());
    calendar.pass(5_000);
    assertFalse(isDrainDue(), "the next day begins with its first cycle");
    calendar.cycleStarted();
    calendar.pass(999);
    assertFalse(isDrainDue());
    calendar.pass(1);
    assertTrue(isDrainDue());
  }

  @Test
  @DisplayName("the longest time without power that a board can tell makes both due")
  void longest() {
    calendar.cycleStarted();
    calendar.pass(Integer.MAX_VALUE);
    assertTrue(isFoilDue() && isDrainDue());
    calendar.pass(Integer.MAX_VALUE);
    assertTrue(isFoilDue() && isDrainDue());
  }

  private void scan(int seconds) {
    for (int second = 0; second < seconds; second++) {
      calendar.pass(1);
    }
  }

  private boolean isFoilDue() {
    return dues.has(Dues.FOIL);
  }

  private boolean isDrainDue() {
    return dues.has(Dues.DRAIN);
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
