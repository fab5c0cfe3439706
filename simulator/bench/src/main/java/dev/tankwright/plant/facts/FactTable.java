package dev.tankwright.plant.facts;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.WallProtection;
import java.util.ArrayList;
import java.util.List;

/** Puts what was found into the lines of the table. */
final class FactTable {
  private static final double MINUTE = 60;
  private static final double HOUR = 3600;
  private static final double HOURS_PER_DAY = 8;
  private static final double WARMING_SECONDS = 60;
  private static final String LID_ON = "lid on";
  private static final String LID_OFF = "lid off";

  private FactTable() {}

  static List<Fact> heating(Curve on, Curve off) {
    List<Fact> facts = new ArrayList<>();
    for (double target : new double[] {BathFacts.WARM, BathFacts.HOT}) {
      facts.add(heating(target, on, LID_ON));
      facts.add(heating(target, off, LID_OFF));
    }
    return facts;
  }

  private static Fact heating(double target, Curve curve, String lid) {
    String what = "Heating from 15 °C to " + Math.round(target) + " °C, " + lid;
    double minutes = curve.secondsTo(target) / MINUTE;
    return new Fact(what, minutes, "min", "fill mark, full heater, no ultrasound, no load");
  }

  static List<Fact> losses(BathProfile profile) {
    List<Fact> facts = new ArrayList<>();
    Losses warmOn = Losses.of(profile, BathFacts.WARM, false);
    Losses warmOff = Losses.of(profile, BathFacts.WARM, true);
    facts.add(loss(BathFacts.WARM, warmOn, LID_ON));
    facts.add(loss(BathFacts.WARM, warmOff, LID_OFF));
    facts.add(loss(BathFacts.HOT, Losses.of(profile, BathFacts.HOT, false), LID_ON));
    facts.add(loss(BathFacts.HOT, Losses.of(profile, BathFacts.HOT, true), LID_OFF));
    facts.add(evaporation(warmOn, LID_ON, "an estimate: 2 % of what an open bath loses"));
    facts.add(evaporation(warmOff, LID_OFF, "still air, Shah 2002, whose scatter is 18 %"));
    facts.addAll(timeConstants(profile, warmOn));
    return facts;
  }

  private static Fact loss(double celsius, Losses losses, String lid) {
    String what = "Losses at " + Math.round(celsius) + " °C, " + lid;
    return new Fact(what, losses.watts(), "W", "held there for 90 min, room 21 °C, 50 % humidity");
  }

  private static Fact evaporation(Losses losses, String lid, String assumption) {
    // A kilogram of vapour is a litre of water within the digits shown.
    double litres = losses.kilogramsPerHour() * HOURS_PER_DAY;
    return new Fact("Evaporation in 8 h at 40 °C, " + lid, litres, "L", assumption);
  }

  private static List<Fact> timeConstants(BathProfile profile, Losses warm) {
    double element = profile.geometry().capacities().heater() / profile.geometry().heaterToWall();
    double filled = profile.levels().fillMarkLitres();
    double capacity = filled * 4180 + profile.geometry().capacities().tank();
    double conductance = warm.watts() / (BathFacts.WARM - PhysicsRun.ROOM);
    return List.of(
        new Fact("Time constant, heater to wall", element, "s", "heat capacity by bond"),
        new Fact(
            "Time constant, wall to solution",
            wallSeconds(profile),
            "s",
            "full heater, solution at 40 °C, no ultrasound"),
        new Fact(
            "Time constant, solution to room",
            capacity / conductance / HOUR,
            "h",
            "fill mark, from the losses at 40 °C, lid on"));
  }

  /** From the wall's excess temperature under full heat. */
  private static double wallSeconds(BathProfile profile) {
    PhysicsRun trial =
        new PhysicsRun(profile, profile.levels().fillMarkLitres(), BathFacts.WARM).fullHeat();
    trial.run(WARMING_SECONDS);
    double excess = trial.bath().wallCelsius() - trial.bath().liquidCelsius();
    return profile.geometry().capacities().wall() * excess / profile.powers().heaterWatts();
  }

  static List<Fact> flow(BathProfile profile, double drainSeconds) {
    String assumption = "water of 20 °C, nothing in the way, until 1 % is left";
    return List.of(new Fact("Draining from the fill mark", drainSeconds, "s", assumption));
  }

  static List<Fact> dry(Curve wall) {
    double rise = 20 / (wall.secondsTo(60) - wall.secondsTo(40));
    String assumption = "empty tank from 20 °C, full heater, ";
    return List.of(
        new Fact("Dry heated wall, rise", rise, "K/s", "empty tank, full heater, 40 to 60 °C"),
        new Fact(
            "Dry heated wall to the limiter, 90 °C",
            wall.secondsTo(WallProtection.LIMITER_CELSIUS),
            "s",
            assumption + "no controller"),
        new Fact(
            "Dry heated wall to damage, 120 °C",
            wall.secondsTo(WallProtection.FUSE_CELSIUS),
            "s",
            assumption + "limiter failed; the thermal fuse opens"));
  }

  static List<Fact> powers(BathProfile profile) {
    double brim = profile.levels().brimLitres();
    return List.of(
        new Fact(
            "Heater per litre",
            profile.powers().heaterWatts() / brim,
            "W/L",
            "volume to the brim; common practice 40 to 100 W/L"),
        new Fact(
            "Ultrasound per litre",
            profile.powers().ultrasoundWatts() / brim,
            "W/L",
            "electrical, to the brim; common practice 10 to 50 W/L"));
  }
}
