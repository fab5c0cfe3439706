package dev.tankwright.fleet;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The working day of one bath in the instrument room of an invented small-animal hospital. The same
 * seed, number and date give the same day. How often things happen is our estimate, no source.
 * Immutable.
 *
 * @param beginMillis how long after the fleet's day begins the bath is switched on, ms
 * @param scenario what happens until it is switched off
 */
record DayPlan(long beginMillis, Scenario scenario) {
  /** When the first bath of a fleet can be switched on. */
  static final LocalTime OPENING = LocalTime.of(7, 0);

  private static final double LATEST_BEGIN = 0.15;
  private static final double EARLIEST_END = 0.10;
  private static final int WHOLE_SECOND = 1_000;
  private static final int LOTS = 400;

  /**
   * Makes a day.
   *
   * @param device the device's id
   * @param seed seed of the whole fleet
   * @param number number of the device in the fleet
   * @param dayMillis length of the fleet's day, ms, at least that of the shortest scenario
   */
  static DayPlan of(String device, long seed, int number, LocalDate date, long dayMillis) {
    SplittableRandom random = new SplittableRandom(mixed(seed, number, date.toEpochDay()));
    long begin = wholeSeconds((long) (random.nextDouble() * LATEST_BEGIN * dayMillis));
    long end = dayMillis - wholeSeconds((long) (random.nextDouble() * EARLIEST_END * dayMillis));
    List<TimelineEntry> timeline = new DayScript(random, end - begin).entries();
    Instant switchedOn = date.atTime(OPENING).toInstant(ZoneOffset.UTC).plusMillis(begin);
    Scenario scenario =
        new Scenario(
            "fleet",
            "",
            "A day of " + device,
            "",
            device,
            switchedOn,
            random.nextLong(Scenario.HIGHEST_SEED),
            Math.max(Scenario.SHORTEST_MILLIS, end - begin),
            BuiltInBaths.byName(BuiltInBaths.USUAL).orElseThrow(),
            start(random),
            DeviceProfile.sixLitre(),
            timeline,
            List.of(),
            new Contents("lot 26-" + (100 + random.nextInt(LOTS)), ""));
    return new DayPlan(begin, scenario);
  }

  private static BathStart start(SplittableRandom random) {
    double litres = 4.4 + 0.5 * random.nextDouble();
    double celsius = 32 + 6 * random.nextDouble();
    double room = 19 + 5 * random.nextDouble();
    return new BathStart(litres, celsius, room, 1.0);
  }

  private static long wholeSeconds(long millis) {
    return millis / WHOLE_SECOND * WHOLE_SECOND;
  }

  // Each part is spread over all bits before the next one is added (SplitMix64's own mixing).
  private static long mixed(long... parts) {
    long mix = 0;
    for (long part : parts) {
      mix = new SplittableRandom(mix ^ part).nextLong();
    }
    return mix;
  }
}
