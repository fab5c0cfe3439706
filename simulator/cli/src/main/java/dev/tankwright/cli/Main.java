package dev.tankwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** The command line {@code tankwright}. */
@CommandLine.Command(
    name = "tankwright",
    description = "Test bench for the control logic of a benchtop ultrasonic instrument cleaner.",
    subcommands = {
      RunCommand.class,
      ReportCommand.class,
      DeliverCommand.class,
      FleetCommand.class,
      RecordCommand.class,
      CyclesCommand.class,
      LintCommand.class,
      SchemaCommand.class,
      CampaignCommand.class,
      MergeCommand.class,
      HuntCommand.class,
      ExploreCommand.class,
      PhasesCommand.class,
      ProfileCommand.class
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "A simulation is evidence about logic, not a certificate. The device's and "
          + "the chemistry's own instructions, local codes and licensed practice come "
          + "first."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:all requirements held; recorded events are complete",
      "1:a requirement failed or was not exercised; recorded events are missing or altered",
      "2:invalid input",
      "3:environment error: broker or database unreachable, folder not writable",
      "70:internal error, a bug in Tankwright",
      "130:a campaign or fleet was stopped by a signal; finished work is kept"
    })
public final class Main {
  private Main() {}

  /** Runs the command and exits with its code. */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int code =
        execute(
            new PrintWriter(out, true, StandardCharsets.UTF_8),
            new PrintWriter(err, true, StandardCharsets.UTF_8),
            args);
    out.flush();
    err.flush();
    // Not a return: threads of an embedded broker need not be waited for.
    Runtime.getRuntime().halt(code);
  }

  /**
   * Runs the command with the given writers and returns its exit code; the virtual machine goes on.
   */
  public static int execute(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = new CommandLine(new Main());
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(true);
    line.setParameterExceptionHandler(Failures::badParameter);
    line.setExecutionExceptionHandler(Failures::failed);
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
