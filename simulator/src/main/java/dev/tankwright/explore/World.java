package dev.tankwright.explore;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.StateWords;
import java.util.List;

/**
 * The world around the controller: what its parts answer to what was driven last. What it remembers
 * is part of the explored state. One thread.
 */
final class World {
  private final Choice[] choices;
  private final Inputs[] pins;
  private boolean heater;
  private boolean cutOffRelay;
  private boolean ultrasound;
  private boolean drain;
  private boolean begun;
  private int temperature;
  private int number;

  World(List<Choice> all) {
    choices = all.toArray(Choice[]::new);
    pins = new Inputs[choices.length];
    for (int i = 0; i < pins.length; i++) {
      pins[i] = fixed(choices[i]);
    }
  }

  /** What does not depend on what was driven. */
  private static Inputs fixed(Choice c) {
    Inputs in = new Inputs();
    in.controlSensorCounts = c.control();
    in.cutOffSensorCounts = c.cutOff();
    in.lidMakeContact = c.lidMake();
    in.lidBreakContact = c.lidBreak();
    in.minimumLevelWet = c.minimum();
    in.fillMarkWet = c.fillMark();
    in.generatorFault = c.generatorFault();
    in.mainsPresent = c.mains();
    in.command = c.key().command();
    in.recipe = c.key().recipe();
    in.foilVerdict = c.key().verdict();
    return in;
  }

  /** What stands on the pins when the world does its choice now. */
  Inputs pins(int choice) {
    Choice c = choices[choice];
    Inputs in = pins[choice];
    in.drainOpenEnd = c.openEnd().of(drain);
    in.drainClosedEnd = c.closedEnd().of(!drain);
    in.heaterCurrent = c.current().of(heater && cutOffRelay && in.mainsPresent);
    in.generatorRunning = c.running().of(ultrasound && in.mainsPresent);
    in.commandSequence = c.key().fresh() ? number ^ 1 : number;
    return in;
  }

  /** The pins as a choice last set them. */
  Inputs pinsOf(int choice) {
    return pins[choice];
  }

  Choice choice(int index) {
    return choices[index];
  }

  /** Remembers what a scan has driven. */
  void remember(int choice, Outputs out) {
    heater = out.heaterRelay;
    cutOffRelay = out.cutOffRelay;
    ultrasound = out.ultrasoundEnable;
    drain = out.drainValveOpen;
    begun = true;
    temperature = choices[choice].temperature();
    number = pins[choice].commandSequence;
  }

  /** True after the first scan. */
  boolean hasBegun() {
    return begun;
  }

  /** Present class of the bath's temperature. */
  int temperature() {
    return temperature;
  }

  void carry(StateWords state) {
    heater = state.carry(heater);
    cutOffRelay = state.carry(cutOffRelay);
    ultrasound = state.carry(ultrasound);
    drain = state.carry(drain);
    begun = state.carry(begun);
    temperature = state.carry(temperature);
    number = state.carry(number);
  }
}
