package dev.tankwright.campaign;

/** A case could not be run to its end: a defect of the program, not of what is tested. */
public final class CaseException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int number;

  CaseException(int number, Cell cell, Throwable cause) {
    super("case " + number + ", " + cell + ", could not be run: " + cause, cause);
    this.number = number;
  }

  /** The case's number. */
  public int number() {
    return number;
  }
}
