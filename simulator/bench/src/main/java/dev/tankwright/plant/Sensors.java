package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;

/** Both temperature sensors, their leads, and the converter that reads them. */
final class Sensors {
  private final SensorChain control;
  private final SensorChain cutOff;
  private final SensorFaults controlFaults;
  private final SensorFaults cutOffFaults;
  private int controlCounts;
  private int cutOffCounts;

  /**
   * Makes both sensors at one temperature.
   *
   * @param deviations how far the sensors are off
   * @param noise chance of the converter
   * @param faultNoise chance of what is broken; apart, so that a repaired fault leaves no trace
   */
  Sensors(
      BathProfile.Sensors sensors,
      BathProfile.Deviations deviations,
      double stepSeconds,
      double celsius,
      Noise noise,
      Noise faultNoise) {
    control =
        new SensorChain(
            sensors.controlTau(), stepSeconds, celsius, deviations.controlSensor(), noise);
    cutOff =
        new SensorChain(
            sensors.cutOffTau(), stepSeconds, celsius, deviations.cutOffSensor(), noise);
    controlFaults = SensorFaults.ofControl(stepSeconds, faultNoise);
    cutOffFaults = SensorFaults.ofCutOff(stepSeconds, faultNoise);
  }

  void step(double liquidCelsius) {
    control.step(liquidCelsius);
    cutOff.step(liquidCelsius);
  }

  /** Shows both readings; called once per scan. */
  void read(Inputs inputs, BrokenParts broken) {
    if (broken.none()) {
      controlCounts = controlFaults.whole(control);
      cutOffCounts = cutOffFaults.whole(cutOff);
    } else {
      convert(broken);
    }
    inputs.controlSensorCounts = controlCounts;
    inputs.cutOffSensorCounts = cutOffCounts;
  }

  private void convert(BrokenParts broken) {
    int first = controlFaults.read(control, broken);
    int second = cutOffFaults.read(cutOff, broken);
    if (broken.has(PartFault.CONVERTER_STUCK)) {
      return;
    }
    boolean swapped = broken.has(PartFault.SENSORS_SWAPPED);
    int lost = (1 << (int) broken.size(PartFault.CONVERTER_MISSING_CODES)) - 1;
    controlCounts = (swapped ? second : first) & ~lost;
    cutOffCounts = (swapped ? first : second) & ~lost;
  }
}
