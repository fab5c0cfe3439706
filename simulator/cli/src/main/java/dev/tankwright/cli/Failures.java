package dev.tankwright.cli;

import dev.tankwright.report.files.UnwritableException;
import java.io.PrintWriter;
import picocli.CommandLine;

/** Turns an exception into a message and an exit code. */
final class Failures {
  private Failures() {}

  static int badParameter(CommandLine.ParameterException e, String[] args) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println("tankwright: " + e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
    err.println("Try '" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
    return ExitCode.BAD_INPUT;
  }

  static int failed(Exception e, CommandLine line, CommandLine.ParseResult result) {
    PrintWriter err = line.getErr();
    if (e instanceof BadInputException) {
      err.println(e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    if (e instanceof UnwritableException) {
      err.println("tankwright: " + e.getMessage());
      return ExitCode.ENVIRONMENT;
    }
    err.println("tankwright: internal error; please report it with the stack trace below");
    e.printStackTrace(err);
    return ExitCode.INTERNAL;
  }
}
