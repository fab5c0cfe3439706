package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The plain sockets of one connection, also those below TLS, remembered so that it can be cut from
 * outside. Thread-safe.
 */
final class OpenSockets {
  private record Open(Socket socket, ReaderGate word) {}

  private final List<Open> sockets = new ArrayList<>();
  private boolean closed;

  /**
   * Remembers a socket.
   *
   * @throws IOException if the connection is closed
   */
  synchronized void add(Socket socket, ReaderGate word) throws IOException {
    if (closed) {
      throw new IOException("the connection is closed");
    }
    socket.setTcpNoDelay(true);
    sockets.add(new Open(socket, word));
  }

  /** Closes every socket made so far, and lets no more be made. */
  synchronized void closeAll() {
    closed = true;
    for (Open open : sockets) {
      try {
        // no lingering: unsent bytes of an abandoned connection are of no use
        open.socket().close();
      } catch (IOException e) {
        // a socket that cannot be closed is as good as closed
      }
    }
  }

  /**
   * Waits, after {@link #closeAll}, until the library can be told to end without losing a thread: a
   * socket that was connected is about to be spoken on, and one that was not never will.
   */
  void awaitSpoken(long limit, TimeUnit unit) throws InterruptedException {
    List<Open> all;
    synchronized (this) {
      all = List.copyOf(sockets);
    }
    for (Open open : all) {
      if (open.socket().isConnected()) {
        open.word().await(limit, unit);
      }
    }
  }
}
