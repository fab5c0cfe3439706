package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Links without a network: the test says what each of them hears from its broker. */
final class ScriptedLinks implements LinkFactory {
  private final List<ScriptedLink> made = new CopyOnWriteArrayList<>();
  private final boolean opensAtOnce;

  ScriptedLinks(boolean opensAtOnce) {
    this.opensAtOnce = opensAtOnce;
  }

  @Override
  public BrokerLink create(long number) {
    ScriptedLink link = new ScriptedLink(opensAtOnce);
    made.add(link);
    return link;
  }

  int count() {
    return made.size();
  }

  ScriptedLink get(int index) {
    return made.get(index);
  }

  /** One of them. */
  static final class ScriptedLink implements BrokerLink {
    final List<Long> sequences = new CopyOnWriteArrayList<>();
    final List<String> sent = new CopyOnWriteArrayList<>();
    final List<DeviceStatus> statuses = new CopyOnWriteArrayList<>();
    final List<String> calls = new CopyOnWriteArrayList<>();
    private final boolean opensAtOnce;
    private volatile Listener listener;

    private ScriptedLink(boolean opensAtOnce) {
      this.opensAtOnce = opensAtOnce;
    }

    @Override
    public void open(Listener heard) {
      listener = heard;
      if (opensAtOnce) {
        heard.opened();
      }
    }

    @Override
    public void announce(DeviceStatus status) {
      calls.add("announce");
      statuses.add(status);
    }

    @Override
    public void send(long sequence, OutgoingEvent event) {
      sequences.add(sequence);
      sent.add(event.id());
    }

    @Override
    public void goodbye(Duration limit) {
      calls.add("goodbye");
    }

    @Override
    public void abandon() {
      calls.add("abandon");
    }

    void announced() {
      listener.announced();
    }

    void acknowledge(int index) {
      listener.acknowledged(sequences.get(index));
    }

    void lose(Throwable cause) {
      listener.lost(cause);
    }
  }
}
