package dev.tankwright.cli;

import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.PublishReport;
import dev.tankwright.events.mqtt.PublisherConfig;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OutboxHealth;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Sends the pending events of an outbox, as its device does when it is switched on again. */
@CommandLine.Command(
    name = "deliver",
    description = "Send the pending events of an outbox, and say how many were acknowledged.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class DeliverCommand implements Callable<Integer> {
  private static final String SOURCE = "/tankwright/";

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Mixin private BrokerOptions broker;

  @CommandLine.Option(
      names = "--outbox",
      required = true,
      paramLabel = "FILE",
      description = "The outbox.")
  private Path file;

  @CommandLine.Option(
      names = "--within",
      paramLabel = "SECONDS",
      defaultValue = "60",
      description = "Time-out. Default: ${DEFAULT-VALUE}.")
  private int seconds;

  @Override
  public Integer call() throws BadInputException {
    if (broker.broker() == null || broker.broker().equals("none")) {
      throw new BadInputException("tankwright: --broker: name the broker, as mqtts://host");
    }
    BrokerAccess access = broker.endpoints(System.getenv()).publisher();
    try (Outboxes temporary = Outboxes.open(null);
        Outbox outbox = temporary.openFile(file)) {
      return deliver(outbox, access);
    }
  }

  private int deliver(Outbox outbox, BrokerAccess access) throws BadInputException {
    OutboxHealth health = outbox.health();
    PrintWriter out = spec.commandLine().getOut();
    long pending = health.committed() - health.acknowledged();
    if (pending == 0) {
      out.printf("%s has no pending events; all %d are acknowledged.%n", file, health.committed());
      return ExitCode.HELD;
    }
    PublisherConfig config = PublisherConfig.forDevice(access, device(outbox), outbox.session());
    Timing timing = new Timing(System::nanoTime, new SecureRandom());
    EventPublisher publisher = MqttEventPublisher.start(config, timing, outbox);
    PublishReport report = publisher.close(Duration.ofSeconds(seconds));
    out.printf("%d of %d pending events were acknowledged.%n", report.acknowledged(), pending);
    if (report.undelivered().isEmpty()) {
      return ExitCode.HELD;
    }
    spec.commandLine().getErr().println("tankwright: " + report.lastError());
    return ExitCode.ENVIRONMENT;
  }

  private String device(Outbox outbox) throws BadInputException {
    try {
      Optional<OutgoingEvent> last = outbox.last();
      String source = ChainedEvent.read(last.orElseThrow().payload()).source();
      if (source.startsWith(SOURCE)) {
        return source.substring(SOURCE.length());
      }
      throw new BadInputException(
          "tankwright: --outbox: the events in %s come from %s, which is not a Tankwright device; sources start with %s"
              .formatted(file, source, SOURCE));
    } catch (OutboxException | NotAnEventException e) {
      throw new BadInputException("tankwright: --outbox: " + file + ": " + e.getMessage());
    }
  }
}
