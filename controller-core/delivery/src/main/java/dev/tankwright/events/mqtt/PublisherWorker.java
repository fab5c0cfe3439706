package dev.tankwright.events.mqtt;

import java.time.Duration;
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
  private final EventQueue queue;
  private final SendWindow window;
  private final FinishDeadline ending;

  private Phase phase = Phase.WAITING;
  private BrokerLink link;
  private long linkNumber;
  private int failures;
  private long due;
  private boolean held; // set before the thread starts, then only by it
  private DeviceStatus wanted = DeviceStatus.UNKNOWN;
  private DeviceStatus said;
  private boolean announcing;
  private volatile String lastError;

  PublisherWorker(
      PublisherConfig config, Timing timing, LinkFactory links, EventQueue queue, boolean held) {
    this.held = held;
    this.config = config;
    this.timing = timing;
    this.links = links;
    this.queue = queue;
    this.window = new SendWindow(queue, config.window());
    this.ending = new FinishDeadline(timing.nanoTime());
  }

  void wake() {
    mailbox.add(() -> {});
  }

  void status(DeviceStatus status) {
    mailbox.add(() -> wanted = status);
  }

  String lastError() {
    return lastError;
  }

  void hold(boolean hold) {
    mailbox.add(() -> held = hold);
  }

  void finishWithin(Duration deadline) {
    mailbox.add(() -> ending.within(deadline));
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
      lastError = "publishing to " + config.broker() + " was interrupted";
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
    return ending.isDue() || (ending.isAsked() && queue.isDrained());
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
          fail("does not answer; check that it is an MQTT broker and is running");
        }
      }
      case OPEN -> {
        if (overdue && !window.isEmpty()) {
          fail("accepts events but does not acknowledge them; see its log");
        } else {
          speak();
        }
      }
    }
  }

  private void connect() {
    long number = ++linkNumber;
    phase = Phase.CONNECTING;
    due = now() + config.connectTimeout().toNanos();
    try {
      link = links.create(number);
      link.open(new Mailing(number));
    } catch (MqttException e) {
      lost(number, e);
    }
  }

  private void speak() {
    if (!held) {
      announce();
    }
    while (!held && phase == Phase.OPEN) {
      if (window.isEmpty()) {
        due = now() + config.ackTimeout().toNanos();
      }
      EventQueue.Entry next = window.next();
      if (next == null) {
        return;
      }
      link.send(next.row(), next.event());
    }
  }

  // One at a time: the library's own window has room for few, and only the last one matters.
  private void announce() {
    DeviceStatus now = wanted.withOutboxTrouble(queue.trouble() != null);
    if (!announcing && !now.equals(said)) {
      announcing = true;
      said = now;
      link.announce(now);
    }
  }

  private void announced(long number) {
    if (number == linkNumber) {
      announcing = false;
    }
  }

  private void opened(long number) {
    if (number == linkNumber && phase == Phase.CONNECTING) {
      phase = Phase.OPEN;
      window.restart();
      said = null;
      announcing = false;
    }
  }

  private void acknowledged(long number, long row) {
    queue.acknowledge(row);
    if (number == linkNumber && phase == Phase.OPEN) {
      window.acknowledged();
      failures = 0;
      due = now() + config.ackTimeout().toNanos();
    }
  }

  private void lost(long number, Throwable cause) {
    if (number == linkNumber && phase != Phase.WAITING) {
      startOver(PlainErrors.of(config.broker(), cause));
    }
  }

  private void fail(String whatItDoes) {
    startOver("the broker at " + config.broker() + " " + whatItDoes);
  }

  private void startOver(String why) {
    lastError = why;
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
      link.goodbye(ending.goodbyeLimit());
    } else {
      drop();
    }
  }

  private long waitNanos() {
    long wait = phase == Phase.OPEN && window.isEmpty() ? NOT_DUE : due - now();
    return Math.max(0, Math.min(wait, ending.leftNanos()));
  }

  private long now() {
    return timing.nanoTime().getAsLong();
  }

  /** Puts what a link says into the mailbox, with the number of the link that said it. */
  private final class Mailing implements BrokerLink.Listener {
    private final long number;

    Mailing(long number) {
      this.number = number;
    }

    @Override
    public void opened() {
      mailbox.add(() -> PublisherWorker.this.opened(number));
    }

    @Override
    public void announced() {
      mailbox.add(() -> PublisherWorker.this.announced(number));
    }

    @Override
    public void acknowledged(long row) {
      mailbox.add(() -> PublisherWorker.this.acknowledged(number, row));
    }

    @Override
    public void lost(Throwable cause) {
      mailbox.add(() -> PublisherWorker.this.lost(number, cause));
    }
  }
}
