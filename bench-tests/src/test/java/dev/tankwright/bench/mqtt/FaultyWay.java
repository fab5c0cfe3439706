package dev.tankwright.bench.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The way between a publisher and its broker, with faults on demand. It reads whole MQTT packets
 * (OASIS MQTT 3.1.1, section 2.2), so that a single acknowledgement can be lost on it.
 */
final class FaultyWay implements AutoCloseable {
  static final int PUBLISH = 3;
  static final int PUBACK = 4;

  private final ServerSocket server;
  private final int target;
  private final List<Socket> sockets = new CopyOnWriteArrayList<>();
  private final Set<Integer> saidByClient = new ConcurrentSkipListSet<>();
  private final AtomicInteger acksToLose = new AtomicInteger();
  private final AtomicInteger publishesToSwallow = new AtomicInteger();
  private final AtomicInteger connectionsToDrop = new AtomicInteger();
  private final CountDownLatch never = new CountDownLatch(1);
  private volatile boolean hole;
  private volatile long delayMillis;

  FaultyWay(int target) throws IOException {
    this.target = target;
    server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    daemon(this::accept);
  }

  URI uri() {
    return URI.create("tcp://127.0.0.1:" + server.getLocalPort());
  }

  /** Packet types that clients have sent, by their numbers in section 2.2.1. */
  Set<Integer> saidByClient() {
    return saidByClient;
  }

  /** Resets every connection. */
  void cut() {
    for (Socket socket : sockets) {
      try {
        socket.setSoLinger(true, 0);
        socket.close();
      } catch (IOException e) {
        // it is closed already
      }
    }
    sockets.clear();
  }

  /** From now on everything disappears without a word, and connections stay open. */
  void swallowAll(boolean yes) {
    hole = yes;
  }

  /** Holds every packet back for so long. */
  void delay(long millis) {
    delayMillis = millis;
  }

  /** Loses the next acknowledgements. */
  void loseAcks(int count) {
    acksToLose.set(count);
  }

  int acksStillToLose() {
    return acksToLose.get();
  }

  /** Acknowledges the next publishes itself and throws them away. */
  void acknowledgeAndSwallow(int count) {
    publishesToSwallow.set(count);
  }

  /** Accepts the next connections and drops them at once. */
  void dropConnections(int count) {
    connectionsToDrop.set(count);
  }

  @Override
  public void close() throws IOException {
    server.close();
    cut();
  }

  private void accept() {
    try {
      while (true) {
        Socket client = server.accept();
        if (taken(connectionsToDrop)) {
          client.close();
          continue;
        }
        try {
          Socket broker = new Socket(InetAddress.getLoopbackAddress(), target);
          sockets.add(client);
          sockets.add(broker);
          daemon(() -> pump(client, broker, true));
          daemon(() -> pump(broker, client, false));
        } catch (IOException e) {
          client.close(); // the broker is away
        }
      }
    } catch (IOException e) {
      // the way is closed
    }
  }

  private void pump(Socket from, Socket to, boolean fromClient) {
    try (from;
        to) {
      DataInputStream in = new DataInputStream(from.getInputStream());
      DataOutputStream out = new DataOutputStream(to.getOutputStream());
      while (true) {
        byte[] packet = packet(in);
        if (delayMillis > 0) {
          never.await(delayMillis, TimeUnit.MILLISECONDS);
        }
        if (passes(packet, from, fromClient)) {
          out.write(packet);
        }
      }
    } catch (IOException e) {
      // cut
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private boolean passes(byte[] packet, Socket from, boolean fromClient) throws IOException {
    int type = (packet[0] & 0xFF) >> 4;
    if (hole) {
      return false;
    }
    if (!fromClient) {
      return type != PUBACK || !taken(acksToLose);
    }
    saidByClient.add(type);
    if (type == PUBLISH && isOfEvent(packet) && taken(publishesToSwallow)) {
      int id = at(packet, topicAt(packet) + 2 + topicLength(packet));
      from.getOutputStream()
          .write(new byte[] {(byte) (PUBACK << 4), 2, (byte) (id >> 8), (byte) id});
      return false;
    }
    return true;
  }

  private static boolean isOfEvent(byte[] packet) {
    int at = topicAt(packet) + 2;
    String topic = new String(packet, at, topicLength(packet), UTF_8);
    return topic.endsWith("/events");
  }

  private static int topicAt(byte[] packet) {
    int at = 1;
    while ((packet[at] & 0x80) != 0) {
      at++;
    }
    return at + 1;
  }

  private static int topicLength(byte[] packet) {
    return at(packet, topicAt(packet));
  }

  private static int at(byte[] packet, int index) {
    return (packet[index] & 0xFF) << 8 | (packet[index + 1] & 0xFF);
  }

  private static byte[] packet(DataInputStream in) throws IOException {
    byte[] head = new byte[5];
    head[0] = in.readByte();
    int length = 0;
    int used = 1;
    do {
      head[used] = in.readByte();
      length |= (head[used] & 0x7F) << (7 * (used - 1));
    } while ((head[used++] & 0x80) != 0);
    byte[] whole = Arrays.copyOf(head, used + length);
    in.readFully(whole, used, length);
    return whole;
  }

  private static boolean taken(AtomicInteger budget) {
    return budget.getAndUpdate(left -> Math.max(0, left - 1)) > 0;
  }

  private static void daemon(Runnable task) {
    Thread thread = new Thread(task, "faulty way");
    thread.setDaemon(true);
    thread.start();
  }
}
