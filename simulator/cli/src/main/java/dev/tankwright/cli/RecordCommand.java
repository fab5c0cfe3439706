package dev.tankwright.cli;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.record.Database;
import dev.tankwright.record.EventStore;
import dev.tankwright.record.Recorder;
import dev.tankwright.record.RecorderSettings;
import dev.tankwright.record.StoreException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Stores the events of all devices of a broker in a database. */
@CommandLine.Command(
    name = "record",
    description = "Store the events of all devices of a broker in a database, until Ctrl-C.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "An event is acknowledged to the broker once it is committed. Whatever ends "
          + "the recorder, the next one with the same database continues where it was. Exit "
          + "code 1: events are missing or altered."
    })
final class RecordCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Mixin private BrokerOptions broker;

  @CommandLine.Mixin private DatabaseOptions place;

  @CommandLine.Option(
      names = "--until-idle",
      paramLabel = "SECONDS",
      description = "Exit when no event has arrived for this long.")
  private Integer idleSeconds;

  @Override
  @SuppressWarnings("try") // the folder only has to be there, and to go
  public Integer call() throws BadInputException, InterruptedException {
    if (broker.broker() == null || broker.broker().equals("none")) {
      throw new BadInputException("tankwright: --broker: name the broker, as mqtts://host");
    }
    if (idleSeconds != null && idleSeconds < 1) {
      throw new BadInputException("tankwright: --until-idle: give whole seconds, at least 1");
    }
    BrokerAccess access = broker.endpoints(System.getenv()).reader();
    Database database = place.database(System.getenv());
    SecureRandom chance = new SecureRandom();
    try (NativeFolder folder = NativeFolder.open();
        EventStore store = EventStore.open(database, InstantSource.system(), chance)) {
      return record(access, store, new Timing(System::nanoTime, chance));
    } catch (StoreException e) {
      return StoreFailures.say(e, spec.commandLine().getErr());
    }
  }

  @SuppressWarnings("try") // the interruption only has to be there, and to go
  private int record(BrokerAccess access, EventStore store, Timing timing)
      throws InterruptedException {
    CommandLine line = spec.commandLine();
    RecordConsole console = new RecordConsole(line.getOut(), line.getErr());
    RecorderSettings settings = RecorderSettings.STANDARD;
    if (idleSeconds != null) {
      settings = settings.withUntilIdle(Duration.ofSeconds(idleSeconds));
    }
    Recorder recorder = new Recorder(access, store, settings, timing, console);
    try (Interruption interruption = new Interruption(recorder::stop)) {
      recorder.run();
      return console.end();
    }
  }
}
