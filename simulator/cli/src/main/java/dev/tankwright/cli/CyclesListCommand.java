package dev.tankwright.cli;

import dev.tankwright.record.CycleRow;
import dev.tankwright.record.CycleText;
import dev.tankwright.record.Records;
import dev.tankwright.record.StoreException;
import java.util.List;
import picocli.CommandLine;

/** Lists cycles. */
@CommandLine.Command(
    name = "list",
    description = "List the cycles: device, number, programme, verdict, start, duration.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CyclesListCommand extends RecordsCommand {
  @Override
  int read(Records records) throws StoreException {
    List<CycleRow> cycles = records.cycles(device());
    if (cycles.isEmpty()) {
      out().println("No cycles are recorded.");
    } else {
      out().print(CycleText.table(cycles));
    }
    return ExitCode.HELD;
  }
}
