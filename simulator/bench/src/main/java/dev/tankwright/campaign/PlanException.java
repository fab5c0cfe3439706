package dev.tankwright.campaign;

/** A campaign that was read cannot be carried out. The message says why and what would be right. */
public final class PlanException extends Exception {
  private static final long serialVersionUID = 1L;

  private final boolean failed;

  PlanException(String message, boolean failed) {
    super(message);
    this.failed = failed;
  }

  /** True when the controller is to blame, for a requirement fails; false when the file is. */
  public boolean isFailedRequirement() {
    return failed;
  }
}
