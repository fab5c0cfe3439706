package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import javax.net.SocketFactory;

/** Makes unconnected plain sockets that can be cut from outside. */
final class PlainSockets extends SocketFactory {
  private final OpenSockets open;

  PlainSockets(OpenSockets open) {
    this.open = open;
  }

  @Override
  public Socket createSocket() throws IOException {
    ReaderGate word = new ReaderGate();
    CautiousSocket socket = new CautiousSocket(word);
    open.add(socket, word);
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

  static UnsupportedOperationException unconnectedOnly() {
    return new UnsupportedOperationException("only unconnected sockets, which have a time limit");
  }
}
