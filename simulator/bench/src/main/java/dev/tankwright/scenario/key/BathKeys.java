package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import dev.tankwright.scenario.quantity.Dimension;
import java.util.List;

/** Keys under {@code bath}: its initial state. */
public final class BathKeys {
  /** Temperatures that solution can have, °C. */
  static final KeyType.Quantity SOLUTION_TEMPERATURE =
      KeyType.quantity(Dimension.TEMPERATURE, "1", "95");

  static final KeyType.Quantity GAS = KeyType.quantity(Dimension.FRACTION, "0", "1.2");
  static final KeyType.Quantity SHARE = KeyType.quantity(Dimension.FRACTION, "0", "1");
  static final KeyType.Quantity LOAD_MASS = KeyType.quantity(Dimension.MASS, "0", "20");

  /** Volume in the tank. */
  public static final Key FILL =
      key(
              "fill",
              KeyType.quantity(Dimension.VOLUME, "0", "100").upTo("the bath's brim"),
              Origin.TRADE,
              "volume in the tank")
          .required("4.5 L")
          .make();

  /** Temperature of solution and tank. */
  public static final Key TEMPERATURE =
      key("temperature", SOLUTION_TEMPERATURE, Origin.TRADE, "of solution and tank")
          .required("19 °C")
          .make();

  /** Temperature of the room. */
  public static final Key AMBIENT =
      key(
              "ambient",
              KeyType.quantity(Dimension.TEMPERATURE, "5", "40"),
              Origin.TRADE,
              "ambient temperature, of the room")
          .otherwise("21 °C")
          .make();

  /** Humidity of the room. */
  public static final Key HUMIDITY =
      key(
              "humidity",
              KeyType.quantity(Dimension.FRACTION, "0.05", "0.95"),
              Origin.TRADE,
              "relative humidity of the room")
          .otherwise("50 %")
          .make();

  /** Dissolved gas. */
  public static final Key DISSOLVED_GAS =
      key("dissolved-gas", GAS, Origin.TRADE, "relative to saturation").otherwise("100 %").make();

  /** Detergent. */
  public static final Key DETERGENT =
      key("detergent", SHARE, Origin.TRADE, "dose relative to the right one; 0 % is plain water")
          .otherwise("100 %")
          .make();

  /** Mass of the load. */
  public static final Key LOAD =
      key("load", LOAD_MASS, Origin.TRADE, "mass of the instruments in the basket in the solution")
          .make();

  /** Overlap of the load. */
  public static final Key OVERLAP =
      key(
              "overlap",
              SHARE,
              Origin.TRADE,
              "fraction of the load that is hidden behind other instruments")
          .otherwise("0 %")
          .with("load")
          .make();

  /** All of them. */
  public static final KeyBlock BLOCK =
      new KeyBlock(
          "bath",
          List.of(FILL, TEMPERATURE, AMBIENT, HUMIDITY, DISSOLVED_GAS, DETERGENT, LOAD, OVERLAP));

  private BathKeys() {}
}
