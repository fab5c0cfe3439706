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
  private final SendWindow window;
  private final Ending ending;

  private Phase phase = Phase.WAITING;
  private BrokerLink link;
  private int linkNumber;
  private int failures;
  private long due;
  private boolean held; // set before the thread starts, then only by it
  private boolean announced;

  PublisherWorker(
      PublisherConfig config,
      Timing timing,
      LinkFactory links,
      Outstanding outstanding,
      boolean held) {
    this.held = held;
    this.config = config;
    this.timing = timing;
    this.links = links;
    this.outstanding = outstanding;
    this.window = new SendWindow(outstanding, config.window());
    this.ending = new Ending(timing.nanoTime());
  }

  void wake() {
    mailbox.add(() -> {});
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
    return ending.isDue() || (ending.isAsked() && outstanding.isEmpty());
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
          fail("does not answer; is it an MQTT broker, and does it run?");
        }
      }
      case OPEN -> {
        if (overdue && !window.isEmpty()) {
          fail("takes events but does not acknowledge them; look at its log");
        } else {
          speak();
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

  private void speak() {
    if (!held && !announced) {
      announced = true;
      link.announce();
    }
    while (!held && phase == Phase.OPEN) {
      if (window.isEmpty()) {
        due = now() + config.ackTimeout().toNanos();
      }
      Map.Entry<Long, OutgoingEvent> next = window.next();
      if (next == null) {
        return;
      }
      link.send(next.getKey(), next.getValue());
    }
  }

  private void opened(int number) {
    if (number == linkNumber && phase == Phase.CONNECTING) {
      phase = Phase.OPEN;
      window.restart();
      announced = false;
    }
  }

  private void acknowledged(int number, long sequence) {
    outstanding.acknowledge(sequence);
    if (number == linkNumber && phase == Phase.OPEN) {
      window.acknowledged();
      failures = 0;
      due = now() + config.ackTimeout().toNanos();
    }
  }

  private void lost(int number, Throwable cause) {
    if (number == linkNumber && phase != Phase.WAITING) {
      startOver(PlainErrors.of(config.broker(), cause));
    }
  }

  private void fail(String whatItDoes) {
    startOver("the broker at " + config.broker() + " " + whatItDoes);
  }

  private void startOver(String why) {
    outstanding.error(why);
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
