package dev.tankwright.cli;

import java.io.Console;

/** Tells whether the console is a terminal. */
final class Terminal {
  private Terminal() {}

  /** True when input and output of the process are a terminal. */
  @SuppressWarnings("SystemConsoleNull") // Null says it up to JDK 21; newer ones are asked below.
  static boolean isPresent() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
