package dev.tankwright.cli;

import dev.tankwright.record.CycleRow;
import dev.tankwright.record.CycleText;
import dev.tankwright.record.EventRow;
import dev.tankwright.record.Records;
import dev.tankwright.record.StoreException;
import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;

/** Shows one cycle. */
@CommandLine.Command(
    name = "show",
    description = "Show the record of one cycle in full, and its events.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CyclesShowCommand extends RecordsCommand {
  private static final Pattern CYCLE = Pattern.compile("(?:cycle/)?([0-9]{1,9})");

  @CommandLine.Parameters(
      paramLabel = "CYCLE",
      description = "Its number, as 1 or cycle/0001; add --device if several devices have it.")
  private String wanted;

  @Override
  int read(Records records) throws BadInputException, IOException {
    CycleRow cycle = find(records);
    EventRow carrier =
        cycle.recordSequence() == null
            ? null
            : records.event(cycle.device(), cycle.recordSequence()).orElse(null);
    out().print(CycleText.whole(cycle, carrier, records.events(cycle)));
    return ExitCode.HELD;
  }

  private CycleRow find(Records records) throws BadInputException, StoreException {
    Matcher number = CYCLE.matcher(wanted);
    if (!number.matches()) {
      throw new BadInputException(
          "tankwright: '" + wanted + "' is not a cycle; give its number, as 1 or cycle/0001");
    }
    long cycle = Long.parseLong(number.group(1));
    List<CycleRow> found =
        records.cycles(device()).stream().filter(row -> row.cycle() == cycle).toList();
    if (found.isEmpty()) {
      throw new BadInputException(
          "tankwright: no cycle "
              + cycle
              + " is recorded; 'tankwright cycles list' lists those that are");
    }
    if (found.size() > 1) {
      String devices = String.join(", ", found.stream().map(CycleRow::device).toList());
      throw new BadInputException(
          "tankwright: several devices have a cycle %d: %s; choose one with --device"
              .formatted(cycle, devices));
    }
    return found.get(0);
  }
}
