package dev.tankwright.plant.bath;

/**
 * What the equations take as given for a while: conductances, rates and solubilities at the present
 * temperatures. A struct, filled by {@link Correlations}.
 */
public final class Coefficients {
  /** Mean specific heat of the liquid from 0 °C to its temperature, J/(kg K). */
  public double specificHeat;

  /** Density of the liquid, kg/m³. */
  public double density;

  /** Heated wall to still liquid when fully wet, W/K. */
  public double wallToLiquid;

  /** Heated wall to the room where it is not wet, W/K. */
  public double wallToRoom;

  /** Liquid through the side walls to the room, W/K. */
  public double sidesToRoom;

  /** Surface of the liquid to the lid, W/K; 0 with the lid off. */
  public double surfaceToLid;

  /** Surface of the liquid to the open room, W/K; 0 with the lid on. */
  public double surfaceToRoom;

  /** Lid to the room, W/K. */
  public double lidToRoom;

  /** Still liquid to the load, W/K. */
  public double liquidToLoad;

  /** Evaporation, kg/s. */
  public double evaporation;

  /** Latent heat of evaporation, J/kg. */
  public double latentHeat;

  /** Discharge coefficient of the drain. */
  public double discharge;

  /** Oxygen in equilibrium with the room's air, mg/L. */
  public double oxygenSaturation;

  /** Nitrogen in equilibrium with the room's air, mg/L. */
  public double nitrogenSaturation;
}
