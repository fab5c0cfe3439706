package dev.tankwright.cli;

import dev.tankwright.delivery.DeliveryReport;
import dev.tankwright.delivery.ReceivedEvent;
import dev.tankwright.delivery.RunDelivery;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.HostMemoryForm;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.StatusWatch;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.run.RunFolder;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import java.util.List;
import java.util.Objects;

/** One scenario: run, deliver, show, write. */
final class OneRun {
  private final Scenario scenario;
  private final Deliveries deliveries;
  private final Console console;
  private final StatusWatch watch = new StatusWatch();

  OneRun(Scenario scenario, Deliveries deliveries, Console console) {
    this.scenario = scenario;
    this.deliveries = deliveries;
    this.console = console;
  }

  /**
   * Runs the scenario.
   *
   * @param folder where to write the results; {@code null} for nowhere
   * @return the exit code
   */
  int run(RunFolder folder) throws BadInputException {
    Deliveries.Begun begun = deliveries.begin(scenario.device());
    console.remark(begun.remark());
    RunDelivery delivery = begun.delivery();
    ScenarioRun run =
        new ScenarioRun(
            scenario,
            Version.text(),
            begun.memory(),
            (event, memory) -> offer(delivery, event, memory));
    RunResult result =
        run.toEnd(
            millis -> console.progress().show(scenario.title(), millis, scenario.durationMillis()));
    console.progress().say("waiting for the last events");
    DeliveryReport report = delivery.finish(Deliveries.LIMIT);
    EventsSeen seen = seen(report);
    console.show(result, seen, run.notDone());
    if (folder != null) {
      folder.write(result, seen, report.received().stream().map(ReceivedEvent::payload).toList());
    }
    if (!result.allHeld()) {
      return ExitCode.FAILED;
    }
    return seen.complete() ? ExitCode.HELD : ExitCode.ENVIRONMENT;
  }

  private void offer(RunDelivery delivery, CycleEvent event, HostMemory memory) {
    delivery.offer(outgoing(event), HostMemoryForm.write(memory));
    if (watch.take(event)) {
      delivery.status(watch.status());
    }
  }

  private static OutgoingEvent outgoing(CycleEvent event) {
    return new OutgoingEvent(event.id(), CloudEventJson.toJson(event));
  }

  private EventsSeen seen(DeliveryReport report) {
    if (!deliveries.publishes()) {
      return EventsSeen.none();
    }
    List<String> undelivered = report.undelivered();
    return new EventsSeen(
        true,
        deliveries.brokerName(),
        report.sent(),
        report.received().size(),
        undelivered,
        report.doubled().size(),
        Objects.requireNonNullElse(report.failure(), ""));
  }
}
