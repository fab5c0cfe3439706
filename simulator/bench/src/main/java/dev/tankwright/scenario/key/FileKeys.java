package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.List;

/** The outermost keys of a scenario file. */
public final class FileKeys {
  /** Title. */
  public static final Key SCENARIO =
      key("scenario", new KeyType.Line(120), Origin.TRADE, "its title")
          .required("First cycle")
          .make();

  /** File of the scenario that is extended. */
  public static final Key EXTENDS =
      key(
              "extends",
              new KeyType.Special("a file relative to this one's folder"),
              Origin.TRADE,
              "another scenario to start from, see [Variants](#variants)")
          .make();

  /** Purpose. */
  public static final Key PURPOSE =
      key("purpose", new KeyType.Line(1000), Origin.OURS, "its purpose, in one sentence")
          .required("Shows a cycle")
          .make();

  /** Id of the device. */
  public static final Key DEVICE =
      key(
              "device",
              new KeyType.Form("[a-z0-9-]{1,40}", "1 to 40 small letters, digits and hyphens"),
              Origin.TRADE,
              "id in events")
          .otherwise("bench-1")
          .example("bench-1")
          .make();

  /** Wall clock at the start. */
  public static final Key CLOCK =
      key(
              "clock",
              new KeyType.Special("years 2000 to 2099"),
              Origin.OURS,
              "simulated wall clock at the start, with its offset")
          .otherwise("2026-01-05T08:00:00Z")
          .example("2026-01-05T08:00:00Z")
          .make();

  /** Seed of chance. */
  public static final Key SEED =
      key("seed", new KeyType.Whole(0, Scenario.HIGHEST_SEED), Origin.TRADE, "random seed")
          .otherwise("1")
          .make();

  /** Length of the run. */
  public static final Key DURATION =
      key(
              "duration",
              KeyType.time(Scenario.SHORTEST_MILLIS, Scenario.LONGEST_MILLIS),
              Origin.TRADE,
              "length of the run")
          .required("70 min")
          .make();

  /** The bath that is simulated. */
  public static final Key PROFILE =
      key(
              "profile",
              new KeyType.Special(
                  "`"
                      + String.join("`, `", BuiltInBaths.names())
                      + "`, or a profile's file relative to this one's folder"),
              Origin.TRADE,
              "the bath itself, see [Bath profiles](#bath-profiles)")
          .otherwise(BuiltInBaths.USUAL)
          .make();

  /** Initial state. */
  public static final Key BATH =
      key("bath", new KeyType.Special(""), Origin.TRADE, "initial state of the bath")
          .required("{fill: 4.5 L, temperature: 19 °C}")
          .make();

  /** Composition of the solution. */
  public static final Key SOLUTION =
      key("solution", new KeyType.Special(""), Origin.TRADE, "composition of the solution").make();

  /** What hangs in the basket. */
  public static final Key LOAD =
      key("load", new KeyType.Special(""), Origin.TRADE, "load in the basket at the start").make();

  /** Parameters of the controller. */
  public static final Key CONTROLLER =
      key(
              "controller",
              new KeyType.Special(""),
              Origin.TRADE,
              "parameters that differ from the six-litre bench bath")
          .make();

  /** What is done. */
  public static final Key TIMELINE =
      key(
              "timeline",
              new KeyType.Special("a list of entries"),
              Origin.TRADE,
              "the actions, see [Timeline](#timeline)")
          .make();

  /** What must be true. */
  public static final Key REQUIREMENTS =
      key(
              "requirements",
              new KeyType.Special("a list of at least one"),
              Origin.TRADE,
              "the requirements, see [Requirements](#requirements)")
          .required("[{name: No heat, never: heater}]")
          .make();

  /** All of them. */
  public static final KeyBlock BLOCK =
      new KeyBlock(
          "the scenario",
          List.of(
              SCENARIO,
              EXTENDS,
              PURPOSE,
              DEVICE,
              CLOCK,
              SEED,
              DURATION,
              PROFILE,
              BATH,
              SOLUTION,
              LOAD,
              CONTROLLER,
              TIMELINE,
              REQUIREMENTS));

  private FileKeys() {}
}
