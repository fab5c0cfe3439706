package dev.tankwright.cli;

import picocli.CommandLine;

/** What was recorded: lists, single cycles, checks, files for other programs. */
@CommandLine.Command(
    name = "cycles",
    description = "List, show, verify and export what 'tankwright record' has stored.",
    subcommands = {
      CyclesListCommand.class,
      CyclesShowCommand.class,
      CyclesVerifyCommand.class,
      CyclesExportCommand.class
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {"", "These commands only read, and may run beside a recorder."})
final class CyclesCommand implements Runnable {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "name a command: list, show, verify or export");
  }
}
