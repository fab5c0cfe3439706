package dev.tankwright.record;

import dev.tankwright.events.mqtt.Backoff;
import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.PlainErrors;
import dev.tankwright.events.mqtt.Timing;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.MqttException;

/**
 * Stores the events of all devices of one broker. A message is acknowledged when it is committed
 * and not before: whatever ends the recorder, the broker still has what the database has not.
 *
 * <p>Everything happens on the thread that calls {@link #run}; {@link #stop} may be called from
 * any. A broker that is away and a database that is full, locked or away are waited for.
 */
public final class Recorder {
  private static final long LONGEST_WAIT = TimeUnit.SECONDS.toNanos(1);

  private final BrokerAccess broker;
  private final EventStore store;
  private final RecorderSettings settings;
  private final Timing timing;
  private final RecorderListener listener;
  private final ArrivalQueue queue = new ArrivalQueue();
  private final CountDownLatch stopping = new CountDownLatch(1);
  private String trouble;
  private long lastArrival;

  /** Made, but not yet connected; the store stays the caller's to close. */
  public Recorder(
      BrokerAccess broker,
      EventStore store,
      RecorderSettings settings,
      Timing timing,
      RecorderListener listener) {
    this.broker = broker;
    this.store = store;
    this.settings = settings;
    this.timing = timing;
    this.listener = listener;
  }

  /** Asks the recorder to store what has arrived, to disconnect and to end. */
  public void stop() {
    stopping.countDown();
    queue.wake();
  }

  /** Records until it is stopped or nothing has come for as long as its settings say. */
  public void run() throws InterruptedException {
    lastArrival = timing.nanoTime().getAsLong();
    int failures = 0;
    while (!isOver()) {
      failures = connection() ? 1 : failures + 1;
      if (!isOver()) {
        pause(failures);
      }
    }
  }

  /** One connection from start to end; returns whether the subscription ever stood. */
  private boolean connection() throws InterruptedException {
    boolean stood = false;
    try (RecorderLink link = new RecorderLink(broker, store.clientId(), queue)) {
      link.open(settings.connectTimeout());
      stood = true;
      recovered();
      listener.listening();
      record(link);
      if (!isOver()) {
        say("the connection to " + broker + " was lost; retrying");
      }
    } catch (MqttException e) {
      say(words(e));
    }
    return stood;
  }

  private String words(MqttException e) {
    if (e.getReasonCode() == MqttException.REASON_CODE_SUBSCRIBE_FAILED) {
      return "the broker at "
          + broker
          + " refuses the subscription to "
          + EventReader.TOPICS
          + "; grant this user the right to read there";
    }
    return PlainErrors.of(broker.uri(), e);
  }

  private void record(RecorderLink link) throws InterruptedException {
    while (!isOver() && !link.isLost()) {
      List<Arrival> batch = queue.next(settings.mostInBatch(), LONGEST_WAIT);
      if (!batch.isEmpty()) {
        store(batch);
        lastArrival = timing.nanoTime().getAsLong();
      }
    }
    List<Arrival> rest = queue.next(Integer.MAX_VALUE, 0);
    if (!rest.isEmpty()) {
      store(rest);
    }
  }

  /** Commits and then acknowledges; gives up only when it is stopped. */
  private void store(List<Arrival> batch) throws InterruptedException {
    List<Message> messages = batch.stream().map(Arrival::message).toList();
    int failures = 0;
    boolean again = true;
    while (again) {
      try {
        BatchResult noted = store.take(messages);
        batch.forEach(Arrival::acknowledge);
        recovered();
        listener.committed(noted);
        again = false;
      } catch (StoreException e) {
        say(e.getMessage() + ". Events that are not stored are not acknowledged; retrying");
        failures++;
        again = stopping.getCount() > 0;
        pause(failures);
      }
    }
  }

  private void pause(int failures) throws InterruptedException {
    Duration pause = Backoff.STANDARD.after(failures, timing.random());
    if (stopping.await(pause.toNanos(), TimeUnit.NANOSECONDS)) {
      queue.wake();
    }
  }

  private boolean isOver() {
    if (stopping.getCount() == 0) {
      return true;
    }
    long idle = timing.nanoTime().getAsLong() - lastArrival;
    return settings.untilIdle().isPresent() && idle >= settings.untilIdle().get().toNanos();
  }

  private void say(String words) {
    if (!words.equals(trouble)) {
      trouble = words;
      listener.trouble(words);
    }
  }

  private void recovered() {
    if (trouble != null) {
      trouble = null;
      listener.recovered();
    }
  }
}
