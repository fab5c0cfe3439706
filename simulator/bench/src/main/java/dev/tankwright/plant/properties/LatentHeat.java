package dev.tankwright.plant.properties;

/**
 * Latent heat of evaporation of water.
 *
 * <p>Source: equation of Clapeyron, L = T dp/dT (1/ρ″ − 1/ρ′), with vapour pressure and densities
 * of IAPWS SR1-86(1992), equations 1 to 3; range of {@link SaturationCurve}, 273.15 to 647.096 K.
 */
public final class LatentHeat {
  private LatentHeat() {}

  /**
   * Latent heat.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return J/kg
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double joulesPerKilogram(double kelvin) {
    double growth =
        1 / SaturationCurve.vapourKilogramsPerCubicMetre(kelvin)
            - 1 / SaturationCurve.liquidKilogramsPerCubicMetre(kelvin);
    return kelvin * SaturationCurve.pascalPerKelvin(kelvin) * growth;
  }
}
