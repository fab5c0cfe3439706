package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.net.SocketFactory;

/** Makes plain sockets and remembers them, so that a connection can be cut from outside. */
final class OpenSockets extends SocketFactory {
  private final List<CautiousSocket> sockets = new ArrayList<>();
  private boolean closed;

  @Override
  public synchronized Socket createSocket() throws IOException {
    if (closed) {
      throw new IOException("the connection has been given up");
    }
    CautiousSocket socket = new CautiousSocket();
    socket.setTcpNoDelay(true);
    sockets.add(socket);
    return socket;
  }

  @Override
  public Socket createSocket(String host, int port) {
    throw unconnectedOnly();
  }

  @Override
  public Socket createSocket(String host, int port, InetAddress local, int localPort) {
    throw unconnectedOnly();
  }

  @Override
  public Socket createSocket(InetAddress host, int port) {
    throw unconnectedOnly();
  }

  @Override
  public Socket createSocket(InetAddress host, int port, InetAddress local, int localPort) {
    throw unconnectedOnly();
  }

  /** Closes every socket made so far, and lets no more be made. */
  synchronized void closeAll() {
    closed = true;
    for (CautiousSocket socket : sockets) {
      try {
        // no lingering: unsent bytes of an abandoned connection are of no use
        socket.close();
      } catch (IOException e) {
        // a socket that cannot be closed is as good as closed
      }
    }
  }

  /**
   * Waits, after {@link #closeAll}, until the library can be told to end without losing a thread.
   */
  void awaitSpoken(long limit, TimeUnit unit) throws InterruptedException {
    List<CautiousSocket> all;
    synchronized (this) {
      all = List.copyOf(sockets);
    }
    for (CautiousSocket socket : all) {
      socket.awaitSpoken(limit, unit);
    }
  }

  private static UnsupportedOperationException unconnectedOnly() {
    return new UnsupportedOperationException("only unconnected sockets, which have a time limit");
  }
}
