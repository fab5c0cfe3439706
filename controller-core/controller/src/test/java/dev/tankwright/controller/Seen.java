package dev.tankwright.controller;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Panel;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;

/** Every field of the outputs at one moment, so that two of them can be compared. */
public record Seen(
    boolean heater,
    boolean cutOff,
    boolean ultrasound,
    int permille,
    int hertz,
    boolean drain,
    boolean buzzer,
    boolean pulse,
    Phase phase,
    Fault fault,
    Refusal refusal,
    int milliC,
    boolean valid,
    int setpoint,
    int remaining,
    boolean degassingRequired,
    boolean solutionDue,
    boolean drainDue,
    boolean foilDue,
    boolean keepingWarm,
    boolean lidOpen) {

  public static Seen of(Outputs o) {
    Panel p = o.panel;
    return new Seen(
        o.heaterRelay,
        o.cutOffRelay,
        o.ultrasoundEnable,
        o.drivePermille,
        o.driveFrequencyHz,
        o.drainValveOpen,
        o.buzzer,
        o.watchdogPulse,
        p.phase,
        p.fault,
        p.refusal,
        p.temperatureMilliC,
        p.temperatureValid,
        p.setpointMilliC,
        p.remainingMs,
        p.degassingRequired,
        p.solutionDue,
        p.drainDue,
        p.foilDue,
        p.keepingWarm,
        p.lidOpen);
  }
}
