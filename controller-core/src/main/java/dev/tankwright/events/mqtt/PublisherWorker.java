package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.MqttException;

/**
 * The publisher's only thread: connects, sends in order, counts acknowledgements, starts again.
 *
 * <p>Everything that others have to say arrives in the mailbox and is carried out here, so the
 * fields need no lock. Nothing waits but the mailbox, and it wakes at the next thing due.
 */
final class PublisherWorker implements Runnable {
  private static final Duration SHORTEST_GOODBYE = Duration.ofMillis(200);
  private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(1);
  private static final long NOT_DUE = TimeUnit.HOURS.toNanos(1);

  private enum Phase {
    WAITING,
    CONNECTING,
    OPEN
  }

  private final BlockingQueue<Runnable> mailbox = new LinkedBlockingQueue<>();
  private final CountDownLatch ended = new CountDownLatch(1);
  private final PublisherConfig config;
  private final Timing timing;
  private final LinkFactory links;
  private final Outstanding outstanding;

  private Phase phase = Phase.WAITING;
  private BrokerLink link;
  private int linkNumber;
  private int failures;
  private long due;
  private long cursor;
  private int inFlight;
  private boolean held;
  private boolean closing;
  private long closeBy;

  PublisherWorker(
      PublisherConfig config, Timing timing, LinkFactory links, Outstanding outstanding) {
    this.config = config;
    this.timing = timing;
    this.links = links;
    this.outstanding = outstanding;
  }

  void wake() {
    mailbox.add(() -> {});
  }

  void hold(boolean hold) {
    mailbox.add(() -> held = hold);
  }

  /** The first call sets the deadline; later ones cannot move it. */
  void finishWithin(Duration deadline) {
    mailbox.add(
        () -> {
          if (!closing) {
            closing = true;
            closeBy = now() + deadline.toNanos();
          }
        });
  }

  boolean awaitEnd(long timeout, TimeUnit unit) throws InterruptedException {
    return ended.await(timeout, unit);
  }

  @Override
  public void run() {
    try {
      due = now();
      while (!finished()) {
        act();
        handle(mailbox.poll(waitNanos(), TimeUnit.NANOSECONDS));
      }
    } catch (InterruptedException e) {
      outstanding.error("publishing to " + config.broker() + " was interrupted before it was done");
    } finally {
      end();
      ended.countDown();
    }
  }

  private void handle(Runnable first) {
    for (Runnable message = first; message != null; message = mailbox.poll()) {
      message.run();
    }
  }

  private boolean finished() {
    return closing && (outstanding.isEmpty() || now() - closeBy >= 0);
  }

  private void act() {
    boolean overdue = now() - due >= 0;
    switch (phase) {
      case WAITING -> {
        if (overdue) {
          connect();
        }
      }
      case CONNECTING -> {
        if (overdue) {
          fail("the broker at %s does not answer; is it an MQTT broker, and does it run?");
        }
      }
      case OPEN -> {
        if (inFlight > 0 && overdue) {
          fail("the broker at %s takes events but does not acknowledge them; look at its log");
        } else {
          sendWhatFits();
        }
      }
    }
  }

  private void connect() {
    int number = ++linkNumber;
    phase = Phase.CONNECTING;
    due = now() + config.connectTimeout().toNanos();
    try {
      link = links.create();
      link.open(new Mailing(number));
    } catch (MqttException e) {
      lost(number, e);
    }
  }

  private void sendWhatFits() {
    while (!held && phase == Phase.OPEN && inFlight < config.window()) {
      Map.Entry<Long, OutgoingEvent> next = outstanding.from(cursor);
      if (next == null) {
        return;
      }
      if (inFlight == 0) {
        due = now() + config.ackTimeout().toNanos();
      }
      inFlight++;
      cursor = next.getKey() + 1;
      link.send(next.getKey(), next.getValue());
    }
  }

  private void opened(int number) {
    if (number == linkNumber && phase == Phase.CONNECTING) {
      phase = Phase.OPEN;
      cursor = 0;
      inFlight = 0;
      link.announce();
    }
  }

  private void acknowledged(int number, long sequence) {
    outstanding.acknowledge(sequence);
    if (number == linkNumber && phase == Phase.OPEN) {
      inFlight--;
      failures = 0;
      due = now() + config.ackTimeout().toNanos();
    }
  }

  private void lost(int number, Throwable cause) {
    if (number == linkNumber && phase != Phase.WAITING) {
      fail(PlainErrors.of(config.broker(), cause).replace("%", "%%"));
    }
  }

  private void fail(String words) {
    outstanding.error(words.formatted(config.broker()));
    drop();
    failures++;
    phase = Phase.WAITING;
    due = now() + config.backoff().after(failures, timing.random()).toNanos();
  }

  private void drop() {
    if (link != null) {
      link.abandon();
      link = null;
    }
  }

  private void end() {
    if (phase == Phase.OPEN) {
      link.goodbye(goodbyeLimit());
    } else {
      drop();
    }
  }

  private Duration goodbyeLimit() {
    Duration left = Duration.ofNanos(closeBy - now());
    if (left.compareTo(SHORTEST_GOODBYE) < 0) {
      return SHORTEST_GOODBYE;
    }
    return left.compareTo(LONGEST_GOODBYE) > 0 ? LONGEST_GOODBYE : left;
  }

  private long waitNanos() {
    long wait = phase == Phase.OPEN && inFlight == 0 ? NOT_DUE : due - now();
    if (closing) {
      wait = Math.min(wait, closeBy - now());
    }
    return Math.max(0, wait);
  }

  private long now() {
    return timing.nanoTime().getAsLong();
  }

  /** Puts what a link says into the mailbox, with the number of the link that said it. */
  private final class Mailing implements BrokerLink.Listener {
    private final int number;

    Mailing(int number) {
      this.number = number;
    }

    @Override
    public void opened() {
      mailbox.add(() -> PublisherWorker.this.opened(number));
    }

    @Override
    public void acknowledged(long sequence) {
      mailbox.add(() -> PublisherWorker.this.acknowledged(number, sequence));
    }

    @Override
    public void lost(Throwable cause) {
      mailbox.add(() -> PublisherWorker.this.lost(number, cause));
    }
  }
}
