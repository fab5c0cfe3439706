package dev.tankwright.cli;

import dev.tankwright.scenario.schema.ScenarioSchema;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Prints the schema of scenario files. */
@CommandLine.Command(
    name = "schema",
    description = "Print the JSON Schema of scenario files, for editors.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class SchemaCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(ScenarioSchema.document());
    return ExitCode.HELD;
  }
}
