package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import dev.tankwright.scenario.quantity.Dimension;
import java.util.List;

/** Keys under {@code solution} and under {@code load}: what is in the tank. */
public final class StockKeys {
  /** Words for kinds of chemistry; only the first means something to the controller. */
  public static final List<String> CHEMISTRIES = List.of("ENZYMATIC", "OTHER");

  static final KeyType.Quantity HOTTEST = KeyType.milli(Dimension.TEMPERATURE, "0", "100");
  private static final KeyType.Line LINE = new KeyType.Line(80);

  /** Kind of chemistry. */
  public static final Key CHEMISTRY =
      key(
              "chemistry",
              KeyType.words(CHEMISTRIES),
              Origin.TRADE,
              "passed to the controller at every START without its own value")
          .make();

  /** Hottest temperature of the chemistry. */
  public static final Key CHEMISTRY_MAXIMUM =
      key(
              "chemistry-maximum",
              HOTTEST,
              Origin.OURS,
              "highest temperature that the chemistry's instructions allow, passed likewise")
          .make();

  /** Lot of the chemistry. */
  public static final Key LOT =
      key(
              "lot",
              LINE,
              Origin.TRADE,
              "lot of the chemistry, for events and reports; not passed to the controller")
          .make();

  /** Dissolved gas. */
  public static final Key DISSOLVED_GAS =
      key("dissolved-gas", BathKeys.GAS, Origin.TRADE, "relative to saturation")
          .otherwise("100 %")
          .make();

  /** Detergent. */
  public static final Key DETERGENT =
      key("detergent", BathKeys.SHARE, Origin.TRADE, "dose relative to the right one")
          .otherwise("100 %")
          .make();

  /** Under {@code solution}. */
  public static final KeyBlock SOLUTION =
      new KeyBlock(
          "solution", List.of(CHEMISTRY, CHEMISTRY_MAXIMUM, LOT, DISSOLVED_GAS, DETERGENT));

  /** Mass of the load. */
  public static final Key MASS =
      key(
              "mass",
              BathKeys.LOAD_MASS,
              Origin.TRADE,
              "mass of the instruments in the basket in the solution")
          .required("1.2 kg")
          .make();

  /** Overlap of the load. */
  public static final Key OVERLAP =
      key(
              "overlap",
              BathKeys.SHARE,
              Origin.TRADE,
              "fraction of it that is hidden behind other instruments")
          .otherwise("0 %")
          .make();

  /** Kind of load. */
  public static final Key KIND =
      key(
              "kind",
              LINE,
              Origin.OURS,
              "kind of load, for events and reports; not passed to the controller")
          .make();

  /** Under {@code load}. */
  public static final KeyBlock LOAD = new KeyBlock("load", List.of(MASS, OVERLAP, KIND));

  private StockKeys() {}
}
