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
  private static final int HEATER = 1;
  private static final int CUT_OFF_RELAY = 2;
  private static final int ULTRASOUND = 4;
  private static final int DRAIN = 8;
  private static final int DRIVEN_WORDS = 16;

  private final Choice[] choices;
  private final int[] pins;
  private final Inputs inputs = new Inputs();
  private final Inputs standing = new Inputs();
  private int driven;
  private boolean begun;
  private int temperature;
  private boolean pressed;
  // Only whether it changes matters: no part of the state.
  private int number;

  World(List<Choice> all) {
    choices = all.toArray(Choice[]::new);
    pins = new int[choices.length * DRIVEN_WORDS];
    for (int at = 0; at < pins.length; at++) {
      pins[at] = pins(choices[at / DRIVEN_WORDS], at % DRIVEN_WORDS);
    }
  }

  /** Contacts and feedbacks under what was driven last. */
  private static int pins(Choice c, int driven) {
    boolean drain = (driven & DRAIN) != 0;
    boolean heated = (driven & HEATER) != 0 && (driven & CUT_OFF_RELAY) != 0 && c.mains();
    Inputs in = new Inputs();
    in.lidMakeContact(c.lidMake());
    in.lidBreakContact(c.lidBreak());
    in.minimumLevelWet(c.minimum());
    in.fillMarkWet(c.fillMark());
    in.generatorFault(c.generatorFault());
    in.mainsPresent(c.mains());
    in.drainOpenEnd(c.openEnd().of(drain));
    in.drainClosedEnd(c.closedEnd().of(!drain));
    in.heaterCurrent(c.current().of(heated));
    in.generatorRunning(c.running().of((driven & ULTRASOUND) != 0 && c.mains()));
    return in.pins();
  }

  /** What stands on the pins when the world does its choice now. */
  Inputs pins(int choice) {
    Choice c = choices[choice];
    Inputs in = inputs;
    in.pins(pins[choice * DRIVEN_WORDS + driven]);
    in.controlSensorCounts = c.control();
    in.cutOffSensorCounts = c.cutOff();
    Key key = c.key();
    in.command = key.command();
    in.recipe = key.recipe();
    in.foilVerdict = key.verdict();
    in.commandSequence = number + (key.fresh() ? 1 : 0);
    return in;
  }

  /** The pins as a choice last set them. */
  Inputs pins() {
    return inputs;
  }

  /**
   * What stood on the pins before, for a controller that takes on a state: the last scan's counter
   * and command; before the first scan those with which it begins.
   */
  Inputs standing(int choice, int millis) {
    standing.millis = millis;
    standing.commandSequence = number;
    if (!begun) {
      standing.commandSequence += choices[choice].key().fresh() ? 1 : 0;
    }
    return standing;
  }

  Choice choice(int index) {
    return choices[index];
  }

  /** How many choices there are. */
  int choices() {
    return choices.length;
  }

  /** Remembers what a scan has driven. */
  void remember(int choice, Outputs out) {
    driven =
        (out.heaterRelay ? HEATER : 0)
            | (out.cutOffRelay ? CUT_OFF_RELAY : 0)
            | (out.ultrasoundEnable ? ULTRASOUND : 0)
            | (out.drainValveOpen ? DRAIN : 0);
    begun = true;
    temperature = choices[choice].temperature();
    pressed = choices[choice].key().fresh();
    number = inputs.commandSequence;
  }

  /** The supply is gone: nothing is driven, and the next scan is a first one. */
  void darken() {
    driven = 0;
    begun = false;
    pressed = false;
  }

  /** True after the first scan. */
  boolean hasBegun() {
    return begun;
  }

  /** Present class of the bath's temperature. */
  int temperature() {
    return temperature;
  }

  /** True when a key was pressed in the last scan. */
  boolean isPressed() {
    return pressed;
  }

  void carry(StateWords state) {
    pressed = state.carry(pressed);
    driven = state.carry(driven);
    begun = state.carry(begun);
    temperature = state.carry(temperature);
  }
}
