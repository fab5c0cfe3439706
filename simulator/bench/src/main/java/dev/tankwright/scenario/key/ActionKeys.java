package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import dev.tankwright.scenario.quantity.Dimension;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Keys of a timeline's entry that say what is done, and what goes with that. */
public final class ActionKeys {
  /** The group of keys of which an entry has just one; the foil's stands beside a command too. */
  public static final String ACTION = "action";

  /** Commands that an operator can give. */
  public static final List<Command> COMMANDS =
      List.copyOf(EnumSet.complementOf(EnumSet.of(Command.NONE)));

  /** What an operator can say of a foil. */
  public static final List<FoilVerdict> VERDICTS =
      List.of(FoilVerdict.MARKED, FoilVerdict.UNMARKED);

  /** The word for hanging foil. */
  public static final String HANG = "hang";

  /** The word for the pins all together. */
  public static final String ALL = "all";

  private static final String START = "command: START";
  private static final long LONGEST = Scenario.LONGEST_MILLIS;
  private static final long STEP = 10;
  private static final KeyType.Words PARTS =
      new KeyType.Words(
          Arrays.stream(PartFault.values()).map(PartFault::key).toList(), "a part, see below");
  private static final KeyType.Line REFERENCE = new KeyType.Line(128);

  /** A key that the operator presses. */
  public static final Key COMMAND =
      key(
              Action.Kind.PRESS.key(),
              KeyType.words(names(COMMANDS)),
              Origin.TRADE,
              "a key press by the operator")
          .oneOf(ACTION)
          .make();

  /** Programme of a start. */
  public static final Key PROGRAMME =
      key(
              "programme",
              KeyType.words(names(List.of(Programme.values()))),
              Origin.TRADE,
              "programme to start; required for a start")
          .example("MEDIUM")
          .with(START)
          .make();

  /** Setpoint of a start. */
  public static final Key SETPOINT =
      key(
              "setpoint",
              KeyType.milli(Dimension.TEMPERATURE, "0", "100").upTo("`setpoint-maximum`"),
              Origin.TRADE,
              "temperature to clean at; default: the programme's own")
          .with(START)
          .make();

  /** Degassing time of a start. */
  public static final Key DEGAS =
      key(
              "degas",
              KeyType.time(1, LONGEST).upTo("`run-maximum`"),
              Origin.TRADE,
              "degassing time, where degassing is required; default: the programme's own")
          .with(START)
          .make();

  /** Cleaning time of a start. */
  public static final Key CLEAN =
      key(
              "clean",
              KeyType.time(1, LONGEST).upTo("`run-maximum`"),
              Origin.TRADE,
              "cleaning time; default: the programme's own")
          .with(START)
          .make();

  /** Kind of chemistry. */
  public static final Key CHEMISTRY =
      key(
              "chemistry",
              KeyType.words(StockKeys.CHEMISTRIES),
              Origin.TRADE,
              "chemistry stated by the operator; default: that of `solution`")
          .with(START)
          .make();

  /** Hottest temperature of the chemistry. */
  public static final Key CHEMISTRY_MAXIMUM =
      key(
              "chemistry-maximum",
              StockKeys.HOTTEST,
              Origin.OURS,
              "highest temperature that its instructions allow; a setpoint above it is refused")
          .with(START)
          .make();

  /** Who starts. */
  public static final Key OPERATOR =
      key(
              "operator",
              REFERENCE,
              Origin.TRADE,
              "the facility's name for whoever starts the cycle; for events, not passed to the"
                  + " controller")
          .with(START)
          .make();

  /** What is started on. */
  public static final Key LOAD =
      key(
              "load",
              REFERENCE,
              Origin.TRADE,
              "the facility's name for the load, likewise; default: the `kind` of the load")
          .with(START)
          .make();

  /** Foil that is hung, or judged. */
  public static final Key FOIL =
      key(
              Action.Kind.HANG_FOIL.key(),
              KeyType.words(Stream.concat(Stream.of(HANG), names(VERDICTS).stream()).toList()),
              Origin.TRADE,
              "three fresh pieces of foil are hung in the bath; or, with `command: ACKNOWLEDGE`,"
                  + " the operator's verdict on them")
          .make();

  /** How the basket is moved. */
  public static final Key BASKET =
      key(
              Action.Kind.MOVE_BASKET.key(),
              KeyType.words(
                  Arrays.stream(BasketMove.values())
                      .map(move -> move.name().toLowerCase(Locale.ROOT))
                      .toList()),
              Origin.TRADE,
              "the basket is lifted out, and 30 g of solution with it (an estimate); hung in again;"
                  + " or hung in with another load, soiled and as warm as the room. Nobody checks"
                  + " that the lid is open")
          .oneOf(ACTION)
          .make();

  /** For how long the power is cut. */
  public static final Key CUT_POWER =
      key(
              Action.Kind.CUT_POWER.key(),
              KeyType.time(STEP, LONGEST),
              Origin.OURS,
              "how long the whole device loses its power, see below")
          .oneOf(ACTION)
          .make();

  /** How far the host's clock is set. */
  public static final Key SET_CLOCK =
      key(
              Action.Kind.SET_CLOCK.key(),
              KeyType.time(-LONGEST, LONGEST),
              Origin.OURS,
              "change of the clock of the device's host, negative for back; not 0")
          .oneOf(ACTION)
          .make();

  /** Where the lid is moved. */
  public static final Key LID =
      key(
              Action.Kind.MOVE_LID.key(),
              KeyType.words(List.of("open", "closed")),
              Origin.TRADE,
              "new position of the lid")
          .oneOf(ACTION)
          .make();

  /** What breaks. */
  public static final Key BREAK =
      key(Action.Kind.BREAK.key(), PARTS, Origin.OURS, "the part to break").oneOf(ACTION).make();

  /** By how much it breaks. */
  public static final Key SIZE =
      key(
              "size",
              new KeyType.Special(""),
              Origin.OURS,
              "size of the fault; default: its usual size")
          .with("break")
          .make();

  /** For how long it is broken. */
  public static final Key FOR =
      key(
              "for",
              KeyType.time(STEP, LONGEST),
              Origin.OURS,
              "time after which it is repaired automatically; default: never")
          .with("break")
          .make();

  /** What is repaired. */
  public static final Key REPAIR =
      key(Action.Kind.REPAIR.key(), PARTS, Origin.TRADE, "the part to repair")
          .oneOf(ACTION)
          .formerly("mend")
          .make();

  /** Values put on pins. */
  public static final Key FORCE =
      key(
              Action.Kind.FORCE.key(),
              new KeyType.Special("pins with values"),
              Origin.TRADE,
              "forces pins to values, see below")
          .oneOf(ACTION)
          .make();

  /** Pins that are released. */
  public static final Key RELEASE =
      key(
              Action.Kind.RELEASE.key(),
              new KeyType.Words(
                  Stream.concat(Stream.of(ALL), Pin.keys().stream()).toList(), "a pin, or `all`"),
              Origin.TRADE,
              "the pin has its real value again")
          .oneOf(ACTION)
          .make();

  /** What is poured in. */
  public static final Key FILL =
      key(
              Action.Kind.FILL.key(),
              KeyType.quantity(Dimension.VOLUME, "0.001", "100").upTo("the bath's brim"),
              Origin.TRADE,
              "solution is added; any excess overflows")
          .oneOf(ACTION)
          .needs("temperature")
          .make();

  /** How warm it is. */
  public static final Key TEMPERATURE =
      key("temperature", BathKeys.SOLUTION_TEMPERATURE, Origin.TRADE, "of the added solution")
          .example("19 °C")
          .with("fill")
          .make();

  /** How much detergent is in it. */
  public static final Key DETERGENT =
      key("detergent", BathKeys.SHARE, Origin.TRADE, "its dose relative to the right one")
          .otherwise("100 %")
          .with("fill")
          .make();

  /** Keys that go with a start alone. */
  public static final List<Key> RECIPE =
      List.of(PROGRAMME, SETPOINT, DEGAS, CLEAN, CHEMISTRY, CHEMISTRY_MAXIMUM, OPERATOR, LOAD);

  /** All of them. */
  public static final KeyBlock BLOCK =
      new KeyBlock(
          "this action",
          Stream.of(
                  List.of(COMMAND),
                  RECIPE,
                  List.of(FOIL, LID, BREAK, SIZE, FOR, REPAIR, FILL, TEMPERATURE, DETERGENT),
                  List.of(BASKET, CUT_POWER, SET_CLOCK, FORCE, RELEASE))
              .flatMap(List::stream)
              .toList());

  private ActionKeys() {}

  private static List<String> names(List<? extends Enum<?>> constants) {
    return constants.stream().map(Enum::name).toList();
  }
}
