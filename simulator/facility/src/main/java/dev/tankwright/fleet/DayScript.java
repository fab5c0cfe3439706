package dev.tankwright.fleet;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Writes what the people at a bath do in a day: load after load, with what comes between. Nearly
 * every action has its moment, so a cycle that does not come about never holds up the rest of the
 * day; a key that is pressed in vain is refused, which is a fact of its own. One thread, one use.
 */
final class DayScript {
  static final long SECOND = 1_000;
  static final long MINUTE = 60 * SECOND;

  private static final long SOLUTION_CHANGE = 12 * MINUTE;
  private static final long CLOSING = 6 * MINUTE;
  private static final int FAULTS = 4;

  private final SplittableRandom random;
  private final long endMillis;
  private final long changeMillis;
  private final int setpointMilliC;
  private final List<TimelineEntry> entries = new ArrayList<>();
  private boolean changed;

  DayScript(SplittableRandom random, long endMillis) {
    this.random = random;
    this.endMillis = endMillis;
    setpointMilliC = 39_000 + 500 * random.nextInt(5);
    changeMillis = (long) ((0.45 + 0.2 * random.nextDouble()) * endMillis);
  }

  List<TimelineEntry> entries() {
    at(20 * SECOND, press(Command.FRESH_SOLUTION));
    long now = between(MINUTE, 3 * MINUTE);
    boolean first = true;
    while (now < endMillis) {
      CycleScript cycle = CycleScript.drawn(random, setpointMilliC, first);
      if (now + cycle.longestMillis() > endMillis - CLOSING && !first) {
        break;
      }
      cycle.write(this, now);
      now += cycle.longestMillis() + between(MINUTE, 12 * MINUTE);
      if (!changed && now > changeMillis && now + SOLUTION_CHANGE < endMillis - CLOSING) {
        changed = true;
        changeSolution(now);
        now += SOLUTION_CHANGE;
      }
      first = false;
    }
    at(endMillis - CLOSING, new Action.MoveLid(false));
    at(endMillis - CLOSING + 10 * SECOND, press(Command.DRAIN));
    lookAfterFaults();
    return entries;
  }

  /** Whoever finds the bath locked lets it cool with the lid open, and resets it. */
  private void lookAfterFaults() {
    String from = TimelineEntry.START;
    for (int i = 0; i < FAULTS; i++) {
      add(from, new When.On(Phase.LOCKOUT, 3 * MINUTE), new Action.MoveLid(true));
      add("", new When.Later(14 * MINUTE), new Action.MoveLid(false));
      add("", new When.Later(10 * SECOND), press(Command.RESET));
      from = "";
    }
  }

  private void add(String from, When when, Action action) {
    entries.add(new TimelineEntry("", from, when, Optional.empty(), action, Place.START));
  }

  private void changeSolution(long now) {
    at(now - 30 * SECOND, new Action.MoveLid(false));
    at(now, press(Command.DRAIN));
    long filling = now + 7 * MINUTE;
    at(filling, new Action.MoveLid(true));
    at(filling + 20 * SECOND, new Action.Fill(4.4 + 0.4 * random.nextDouble(), 36));
    at(filling + 2 * MINUTE, new Action.MoveLid(false));
    at(filling + 2 * MINUTE + 20 * SECOND, press(Command.FRESH_SOLUTION));
  }

  /** Another load is hung in before a cycle. */
  void changeBasket(long now) {
    at(now, new Action.MoveLid(true));
    at(now + 10 * SECOND, new Action.MoveBasket(BasketMove.FRESH));
    at(now + 18 * SECOND, new Action.MoveLid(false));
  }

  void at(long millis, Action action) {
    entries.add(new TimelineEntry(new When.At(millis), action, Place.START));
  }

  /** A key that says nothing else. */
  static Action press(Command command) {
    return new Action.Press(command, null, FoilVerdict.NONE);
  }

  private long between(long least, long most) {
    return random.nextLong(least / SECOND, most / SECOND) * SECOND;
  }
}
