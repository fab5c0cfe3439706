package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.scenario.profile.BuiltInBaths;

/** A six-litre bath without a controller: the test drives its outputs and reads its pins. */
final class Bench {
  final Plant plant;
  final Inputs pins = new Inputs();
  final Outputs outputs = new Outputs();
  private int millis;

  Bench(double litres, double celsius) {
    plant = new Plant(BuiltInBaths.usual(), new BathStart(litres, celsius, 21, 1), 5);
    outputs.cutOffRelay = true;
    outputs.drivePermille = 1000;
  }

  static Bench withBroken(PartFault fault, double size) {
    Bench bench = new Bench(4.5, 40);
    bench.plant.breakPart(fault, size);
    return bench;
  }

  /** One scan: the pins are read, then a step passes. */
  void scan() {
    plant.read(pins, millis);
    plant.step(outputs);
    millis += Plant.STEP_MILLIS;
  }

  void scans(int count) {
    for (int i = 0; i < count; i++) {
      scan();
    }
  }

  int millis() {
    return millis;
  }

  double see(Pin pin) {
    return pin.of(plant, pins);
  }
}
