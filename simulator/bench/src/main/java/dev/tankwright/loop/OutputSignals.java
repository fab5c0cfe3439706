package dev.tankwright.loop;

import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Panel;

/** The signals that the controller's outputs and panel carry. */
final class OutputSignals {
  private static final double MILLI = 1000;

  private OutputSignals() {}

  static double value(Signal signal, Outputs outputs) {
    Panel panel = outputs.panel;
    return switch (signal) {
      case HEATER -> ClosedLoop.number(outputs.heaterRelay);
      case CUT_OFF_RELAY -> ClosedLoop.number(outputs.cutOffRelay);
      case ULTRASOUND -> ClosedLoop.number(outputs.ultrasoundEnable);
      case DRIVE_LEVEL -> outputs.drivePermille / MILLI;
      case DRAIN_VALVE -> ClosedLoop.number(outputs.drainValveOpen);
      case BUZZER -> ClosedLoop.number(outputs.buzzer);
      case MEASURED_TEMPERATURE -> panel.temperatureMilliC / MILLI;
      case SETPOINT -> panel.setpointMilliC / MILLI;
      case DEGAS_OWED -> ClosedLoop.number(panel.degassingRequired);
      case SOLUTION_DUE -> ClosedLoop.number(panel.solutionDue);
      case DRAIN_DUE -> ClosedLoop.number(panel.drainDue);
      case FOIL_CHECK_DUE -> ClosedLoop.number(panel.foilDue);
      case KEEPING_WARM -> ClosedLoop.number(panel.keepingWarm);
      case REMAINING_TIME -> panel.remainingMs / MILLI;
      case PHASE -> panel.phase.ordinal();
      case FAULT -> panel.fault == null ? 0 : 1 + panel.fault.ordinal();
      case REFUSAL -> panel.refusal == null ? 0 : 1 + panel.refusal.ordinal();
      default -> throw new IllegalArgumentException(signal + " is no signal of the outputs");
    };
  }
}
