package dev.tankwright.controller;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;

/**
 * Contacts and feedbacks that answer the outputs ideally, unless something is broken on purpose.
 * Allocates nothing after construction.
 */
public final class IdealBoard {
  /** How a feedback behaves. */
  public enum Feedback {
    FOLLOWS,
    STUCK_OFF,
    STUCK_ON
  }

  private static final int VALVE_TRAVEL_MS = 1_000;

  public Feedback heaterCurrent = Feedback.FOLLOWS;
  public Feedback generatorRunning = Feedback.FOLLOWS;
  public boolean valveJammed;
  private int valveOpenMs;

  /** Sets the pins of a closed, filled, healthy device at rest. */
  public static void rest(Inputs in) {
    in.lidMakeContact(true);
    in.lidBreakContact(false);
    in.minimumLevelWet(true);
    in.fillMarkWet(true);
    in.drainClosedEnd(true);
    in.drainOpenEnd(false);
    in.mainsPresent(true);
  }

  /** Lets the feedbacks answer what was driven, for the given time. */
  public void answer(Outputs out, Inputs in, int dtMs) {
    boolean heats = in.mainsPresent() && out.heaterRelay && out.cutOffRelay;
    in.heaterCurrent(read(heaterCurrent, heats));
    in.generatorRunning(read(generatorRunning, in.mainsPresent() && out.ultrasoundEnable));
    if (!valveJammed) {
      int moved = out.drainValveOpen ? valveOpenMs + dtMs : valveOpenMs - dtMs;
      valveOpenMs = Math.max(0, Math.min(VALVE_TRAVEL_MS, moved));
      in.drainOpenEnd(valveOpenMs == VALVE_TRAVEL_MS);
      in.drainClosedEnd(valveOpenMs == 0);
    }
  }

  private static boolean read(Feedback feedback, boolean ideal) {
    return switch (feedback) {
      case FOLLOWS -> ideal;
      case STUCK_OFF -> false;
      case STUCK_ON -> true;
    };
  }
}
