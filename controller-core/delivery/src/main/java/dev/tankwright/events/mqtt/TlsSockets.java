package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import javax.net.ssl.SSLSocketFactory;

/** Makes unconnected TLS sockets that can be cut from outside. */
final class TlsSockets extends SSLSocketFactory {
  private final OpenSockets open;
  private final SSLSocketFactory factory;

  TlsSockets(OpenSockets open, TlsIdentity identity) {
    this.open = open;
    this.factory = identity.socketFactory();
  }

  @Override
  public Socket createSocket() throws IOException {
    ReaderGate word = new ReaderGate();
    Socket plain = new Socket();
    open.add(plain, word);
    return new CautiousTlsSocket(factory, plain, word);
  }

  @Override
  public String[] getDefaultCipherSuites() {
    return factory.getDefaultCipherSuites();
  }

  @Override
  public String[] getSupportedCipherSuites() {
    return factory.getSupportedCipherSuites();
  }

  @Override
  public Socket createSocket(Socket socket, String host, int port, boolean autoClose) {
    throw PlainSockets.unconnectedOnly();
  }

  @Override
  public Socket createSocket(String host, int port) {
    throw PlainSockets.unconnectedOnly();
  }

  @Override
  public Socket createSocket(String host, int port, InetAddress local, int localPort) {
    throw PlainSockets.unconnectedOnly();
  }

  @Override
  public Socket createSocket(InetAddress host, int port) {
    throw PlainSockets.unconnectedOnly();
  }

  @Override
  public Socket createSocket(InetAddress host, int port, InetAddress local, int localPort) {
    throw PlainSockets.unconnectedOnly();
  }
}
