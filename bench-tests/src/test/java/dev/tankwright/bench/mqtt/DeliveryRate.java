package dev.tankwright.bench.mqtt;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.PublisherConfig;
import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxHealth;
import dev.tankwright.events.outbox.OutboxSettings;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.concurrent.locks.LockSupport;
import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/**
 * Acknowledged events per second and the time to the subscriber, of the bare client and of outbox
 * and publisher, turn by turn in one run against one broker. Arguments: the broker's address, the
 * number of events of a turn, the number of rounds.
 */
final class DeliveryRate {
  private static final int MOST_OWED = 400;
  private static final int LOAD = 340; // makes events of some 600 bytes

  private final URI broker;
  private final int events;
  private final AtomicLongArray began;
  private final AtomicLongArray committed;
  private final AtomicLongArray arrived;
  private final AtomicInteger arrivals = new AtomicInteger();

  private DeliveryRate(URI broker, int events) {
    this.broker = broker;
    this.events = events;
    began = new AtomicLongArray(events);
    committed = new AtomicLongArray(events);
    arrived = new AtomicLongArray(events);
  }

  public static void main(String[] args) throws Exception {
    int events = Integer.parseInt(args[1]);
    for (int round = 0; round < Integer.parseInt(args[2]); round++) {
      for (int window : new int[] {10, 100}) {
        DeliveryRate bare = new DeliveryRate(URI.create(args[0]), events);
        bare.report("bare", round, window, bare.bare(window, 0));
        DeliveryRate durable = new DeliveryRate(URI.create(args[0]), events);
        durable.report("outbox", round, window, durable.durable(window, 0));
      }
      DeliveryRate bare = new DeliveryRate(URI.create(args[0]), 500);
      bare.report("bare, 200/s", round, 10, bare.bare(10, 5_000_000));
      DeliveryRate durable = new DeliveryRate(URI.create(args[0]), 500);
      durable.report("outbox, 200/s", round, 10, durable.durable(10, 5_000_000));
    }
  }

  private void report(String what, int round, int window, long nanos) {
    String offered = spread(began);
    System.out.printf(
        "%-14s round %d window %3d: %6.0f/s, to the subscriber from the offer %s, from the commit"
            + " %s%n",
        what,
        round,
        window,
        events * 1e9 / nanos,
        offered,
        committed.get(0) == 0 ? "-" : spread(committed));
  }

  private String spread(AtomicLongArray from) {
    long[] took = new long[events];
    for (int i = 0; i < events; i++) {
      took[i] = arrived.get(i) - from.get(i);
    }
    Arrays.sort(took);
    return "p50 %.2f ms, p99 %.2f ms"
        .formatted(took[events / 2] / 1e6, took[events * 99 / 100] / 1e6);
  }

  private MqttAsyncClient subscriber() throws MqttException {
    MqttAsyncClient client = connected("rate-reader", 10);
    client
        .subscribe(
            "tankwright/+/events",
            1,
            null,
            null,
            (topic, message) -> {
              byte[] payload = message.getPayload();
              arrived.set(number(payload) - 1, System.nanoTime());
              arrivals.incrementAndGet();
            })
        .waitForCompletion();
    return client;
  }

  /** The ten digits of the id, which stand at a fixed place. */
  private static int number(byte[] payload) {
    int number = 0;
    for (int i = 27; i < 37; i++) {
      number = number * 10 + payload[i] - '0';
    }
    return number;
  }

  private MqttAsyncClient connected(String id, int window) throws MqttException {
    MqttAsyncClient client = new MqttAsyncClient(broker.toString(), id, new MemoryPersistence());
    MqttConnectOptions options = new MqttConnectOptions();
    options.setMaxInflight(window + 10);
    client.connect(options).waitForCompletion();
    return client;
  }

  private void pace(long start, int event, long gapNanos) {
    while (gapNanos > 0 && System.nanoTime() - start < event * gapNanos) {
      LockSupport.parkNanos(gapNanos / 10);
    }
  }

  private void awaitArrivals() {
    while (arrivals.get() < events) {
      LockSupport.parkNanos(1_000_000);
    }
  }

  private long bare(int window, long gapNanos) throws Exception {
    MqttAsyncClient reader = subscriber();
    MqttAsyncClient client = connected("rate-bare", window);
    ChainedEvents made = ChainedEvents.after(Device.NAME, Optional.empty());
    Semaphore room = new Semaphore(window);
    IMqttActionListener done =
        new IMqttActionListener() {
          @Override
          public void onSuccess(IMqttToken token) {
            room.release();
          }

          @Override
          public void onFailure(IMqttToken token, Throwable cause) {
            throw new IllegalStateException(cause);
          }
        };
    OutgoingEvent[] all = all(made);
    long start = System.nanoTime();
    for (int i = 0; i < events; i++) {
      pace(start, i, gapNanos);
      room.acquire();
      began.set(i, System.nanoTime());
      client.publish("tankwright/bath-1/events", all[i].payload(), 1, false, null, done);
    }
    room.acquire(window);
    long took = System.nanoTime() - start;
    awaitArrivals();
    client.disconnect().waitForCompletion();
    reader.disconnect().waitForCompletion();
    return took;
  }

  private OutgoingEvent[] all(ChainedEvents made) {
    OutgoingEvent[] all = new OutgoingEvent[events];
    for (int i = 0; i < events; i++) {
      all[i] = made.next(LOAD);
    }
    return all;
  }

  private static long owed(OutboxHealth health) {
    return health.waiting() + health.committed() - health.acknowledged();
  }

  private void append(Outbox outbox, OutgoingEvent[] all, int number) {
    began.set(number, System.nanoTime());
    outbox.append(all[number]);
  }

  private static void awaitDrained(Outbox outbox) {
    while (!outbox.isDrained()) {
      LockSupport.parkNanos(100_000);
    }
  }

  private long durable(int window, long gapNanos) throws Exception {
    MqttAsyncClient reader = subscriber();
    Path folder = Files.createTempDirectory("rate");
    Outbox outbox =
        Outbox.open(folder.resolve("outbox.db"), OutboxSettings.STANDARD, InstantSource.system());
    OutgoingEvent[] all = all(ChainedEvents.after(Device.NAME, outbox.last()));
    PublisherConfig config =
        PublisherConfig.forDevice(
                BrokerAccess.of(BrokerUri.of(broker)), Device.NAME, outbox.session())
            .withWindow(window);
    CommitTimes times = new CommitTimes(outbox, committed);
    EventPublisher publisher = MqttEventPublisher.start(config, Device.TIMING, times);
    // The bare client is connected when its clock starts: so is this one, once its first has gone.
    append(outbox, all, 0);
    awaitDrained(outbox);
    long start = System.nanoTime();
    for (int i = 1; i < events; i++) {
      pace(start, i, gapNanos);
      while (owed(outbox.health()) > MOST_OWED) {
        LockSupport.parkNanos(100_000);
      }
      append(outbox, all, i);
    }
    awaitDrained(outbox);
    long took = System.nanoTime() - start;
    awaitArrivals();
    publisher.close(Duration.ofSeconds(5));
    outbox.close();
    reader.disconnect().waitForCompletion();
    try (var files = Files.list(folder)) {
      files.forEach(file -> file.toFile().delete());
    }
    Files.delete(folder);
    return took;
  }
}
