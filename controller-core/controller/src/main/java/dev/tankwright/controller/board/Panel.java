package dev.tankwright.controller.board;

/** What the panel shows. A struct, written by the controller once per scan. */
public final class Panel {
  /** Phase of the device. */
  public Phase phase = Phase.SELF_TEST;

  /** The most severe latched fault, or {@code null}. */
  public Fault fault;

  /** The last refused command's reason, until another command is accepted; or {@code null}. */
  public Refusal refusal;

  /** Temperature by the control sensor, m°C; meaningless unless {@link #temperatureValid}. */
  public int temperatureMilliC;

  /** False while the control sensor cannot be believed. */
  public boolean temperatureValid;

  /** Setpoint of the cycle, m°C; 0 outside a cycle. */
  public int setpointMilliC;

  /** What is left of degassing and cleaning, ms; heating up is not counted. 0 outside a cycle. */
  public int remainingMs;

  /** True while the solution must be degassed before it cleans. */
  public boolean degassingRequired;

  /** True while the solution is older than it should be. */
  public boolean solutionDue;

  /** True while the tank is to be drained and dried, at the end of the working day. */
  public boolean drainDue;

  /** True while the next foil check is due. */
  public boolean foilDue;

  /** True while the solution is kept warm between two cycles. */
  public boolean keepingWarm;

  /** True unless both lid contacts say that the lid is closed. */
  public boolean lidOpen;
}
