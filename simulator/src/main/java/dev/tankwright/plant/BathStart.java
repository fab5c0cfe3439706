package dev.tankwright.plant;

/**
 * How the bath stands when a run begins.
 *
 * @param litres filled volume, L, 0 to the tank's brim
 * @param celsius temperature of the solution and of the tank, °C, 1–95
 * @param ambientCelsius temperature of the room, °C, 5–40
 * @param gasSaturation dissolved gas as a fraction of saturation at the filling temperature, 0–1.2
 */
public record BathStart(
    double litres, double celsius, double ambientCelsius, double gasSaturation) {}
