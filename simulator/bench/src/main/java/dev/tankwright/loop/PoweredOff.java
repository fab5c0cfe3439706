package dev.tankwright.loop;

import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Panel;
import dev.tankwright.controller.board.Phase;

/** The pins and the panel of a board without supply. */
final class PoweredOff {
  private PoweredOff() {}

  /**
   * Sets every output off. Without a controller there is no phase; the panel has the one with which
   * the next controller starts.
   */
  static void apply(Outputs outputs) {
    outputs.heaterRelay = false;
    outputs.cutOffRelay = false;
    outputs.ultrasoundEnable = false;
    outputs.drivePermille = 0;
    outputs.driveFrequencyHz = 0;
    outputs.drainValveOpen = false;
    outputs.buzzer = false;
    outputs.watchdogPulse = false;
    apply(outputs.panel);
  }

  private static void apply(Panel panel) {
    panel.phase = Phase.SELF_TEST;
    panel.fault = null;
    panel.refusal = null;
    panel.temperatureMilliC = 0;
    panel.temperatureValid = false;
    panel.setpointMilliC = 0;
    panel.remainingMs = 0;
    panel.degassingRequired = false;
    panel.solutionDue = false;
    panel.drainDue = false;
    panel.foilDue = false;
    panel.keepingWarm = false;
    panel.lidOpen = false;
  }
}
