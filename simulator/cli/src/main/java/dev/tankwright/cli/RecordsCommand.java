package dev.tankwright.cli;

import dev.tankwright.record.Records;
import dev.tankwright.record.StoreException;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Base of the commands that read a database of recorded events. */
abstract class RecordsCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Mixin private DatabaseOptions place;

  @CommandLine.Option(
      names = "--device",
      paramLabel = "DEVICE",
      description = "Only this device. Default: all.")
  private String device;

  @Override
  @SuppressWarnings("try") // the folder only has to be there, and to go
  public Integer call() throws BadInputException, IOException {
    try (NativeFolder folder = NativeFolder.open();
        Records records = Records.open(place.database(System.getenv()))) {
      checkDevice(records);
      return read(records);
    } catch (StoreException e) {
      return StoreFailures.say(e, spec.commandLine().getErr());
    }
  }

  private void checkDevice(Records records) throws BadInputException, StoreException {
    List<String> known = records.devices();
    if (device != null && !known.contains(device)) {
      throw new BadInputException(
          "tankwright: --device: no events of '%s' are recorded; recorded devices: %s"
              .formatted(device, String.join(", ", known)));
    }
  }

  /** Does the command's work and returns the exit code. */
  abstract int read(Records records) throws BadInputException, IOException;

  /** The device that was named. */
  Optional<String> device() {
    return Optional.ofNullable(device);
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
