package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerUri;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Stands between clients and a broker, and cuts or freezes what runs through it when told to. */
final class CuttableProxy implements AutoCloseable {
  private final List<Socket> sockets = new CopyOnWriteArrayList<>();
  private final ServerSocket server;
  private final int target;
  private boolean frozen;

  CuttableProxy(BrokerUri target) throws IOException {
    this.target = target.port();
    server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    daemon(this::accept);
  }

  BrokerUri uri() {
    return new BrokerUri("127.0.0.1", server.getLocalPort());
  }

  /** Cuts every connection with a reset, as a lost cable or a killed process would. */
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

  /** Holds back all that the broker says. */
  synchronized void freeze() {
    frozen = true;
  }

  synchronized void thaw() {
    frozen = false;
    notifyAll();
  }

  /** Cuts, and refuses whoever comes after. */
  void vanish() throws IOException {
    server.close();
    thaw();
    cut();
  }

  @Override
  public void close() throws IOException {
    vanish();
  }

  private void accept() {
    try {
      while (true) {
        Socket client = server.accept();
        Socket broker = new Socket(InetAddress.getLoopbackAddress(), target);
        sockets.add(client);
        sockets.add(broker);
        daemon(() -> pump(client, broker, false));
        daemon(() -> pump(broker, client, true));
      }
    } catch (IOException e) {
      // closed, or the broker is gone
    }
  }

  private void pump(Socket from, Socket to, boolean freezable) {
    byte[] bytes = new byte[8192];
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
        if (freezable) {
          awaitThaw();
        }
        out.write(bytes, 0, n);
      }
    } catch (IOException | InterruptedException e) {
      // cut
    }
  }

  private synchronized void awaitThaw() throws InterruptedException {
    while (frozen) {
      wait();
    }
  }

  private static void daemon(Runnable task) {
    Thread thread = new Thread(task, "proxy");
    thread.setDaemon(true);
    thread.start();
  }
}
