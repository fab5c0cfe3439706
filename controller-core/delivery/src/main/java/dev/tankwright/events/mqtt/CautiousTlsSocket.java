package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.SocketException;
import javax.net.ssl.HandshakeCompletedListener;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSession;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;

/**
 * TLS 1.2 or later over a plain socket of ours: the host's name is always verified, and what is
 * within stays deaf until the first byte has been said (see {@link ReaderGate}); the handshake is
 * none of it.
 *
 * <p>The plain socket below can be closed from outside at any moment, while closing a TLS socket
 * may wait for its peer. Only what the client library calls is there; the rest refuses.
 */
@SuppressWarnings("UnsynchronizedOverridesSynchronized") // the sockets within do their own locking
final class CautiousTlsSocket extends SSLSocket {
  private static final String[] PROTOCOLS = {"TLSv1.3", "TLSv1.2"};

  private final SSLSocketFactory factory;
  private final Socket plain;
  private final ReaderGate word;
  private SSLSocket tls;

  CautiousTlsSocket(SSLSocketFactory factory, Socket plain, ReaderGate word) {
    this.factory = factory;
    this.plain = plain;
    this.word = word;
  }

  @Override
  public void connect(SocketAddress address, int timeoutMillis) throws IOException {
    plain.connect(address, timeoutMillis);
    InetSocketAddress peer = (InetSocketAddress) address;
    tls = (SSLSocket) factory.createSocket(plain, peer.getHostString(), peer.getPort(), true);
    tls.setEnabledProtocols(PROTOCOLS);
    verifyHost(tls.getSSLParameters());
  }

  // RFC 2818, section 3.1, as every HTTPS client does it; RFC 8446 leaves it to the application.
  private void verifyHost(SSLParameters parameters) {
    parameters.setEndpointIdentificationAlgorithm("HTTPS");
    tls.setSSLParameters(parameters);
  }

  @Override
  public void setSSLParameters(SSLParameters parameters) {
    verifyHost(parameters);
  }

  @Override
  public SSLParameters getSSLParameters() {
    return tls.getSSLParameters();
  }

  @Override
  public void startHandshake() throws IOException {
    tls.startHandshake();
  }

  @Override
  public InputStream getInputStream() throws IOException {
    return word.deafUntilSpoken(tls.getInputStream());
  }

  @Override
  public OutputStream getOutputStream() throws IOException {
    return word.noticed(tls.getOutputStream());
  }

  @Override
  public void close() throws IOException {
    if (tls == null || plain.isClosed()) {
      plain.close();
    } else {
      tls.close();
    }
  }

  @Override
  public void setSoTimeout(int millis) throws SocketException {
    plain.setSoTimeout(millis);
  }

  @Override
  public int getSoTimeout() throws SocketException {
    return plain.getSoTimeout();
  }

  @Override
  public boolean isConnected() {
    return plain.isConnected();
  }

  @Override
  public boolean isClosed() {
    return plain.isClosed();
  }

  @Override
  public SSLSession getSession() {
    return tls.getSession();
  }

  @Override
  public String[] getSupportedCipherSuites() {
    return factory.getSupportedCipherSuites();
  }

  @Override
  public String[] getEnabledCipherSuites() {
    return tls.getEnabledCipherSuites();
  }

  @Override
  public void setEnabledCipherSuites(String[] suites) {
    tls.setEnabledCipherSuites(suites);
  }

  @Override
  public String[] getSupportedProtocols() {
    return PROTOCOLS.clone();
  }

  @Override
  public String[] getEnabledProtocols() {
    return tls.getEnabledProtocols();
  }

  @Override
  public void setEnabledProtocols(String[] protocols) {
    throw fixed();
  }

  @Override
  public void addHandshakeCompletedListener(HandshakeCompletedListener listener) {
    throw fixed();
  }

  @Override
  public void removeHandshakeCompletedListener(HandshakeCompletedListener listener) {
    throw fixed();
  }

  @Override
  public void setUseClientMode(boolean mode) {
    throw fixed();
  }

  @Override
  public boolean getUseClientMode() {
    return true;
  }

  @Override
  public void setNeedClientAuth(boolean need) {
    throw fixed();
  }

  @Override
  public boolean getNeedClientAuth() {
    return false;
  }

  @Override
  public void setWantClientAuth(boolean want) {
    throw fixed();
  }

  @Override
  public boolean getWantClientAuth() {
    return false;
  }

  @Override
  public void setEnableSessionCreation(boolean flag) {
    throw fixed();
  }

  @Override
  public boolean getEnableSessionCreation() {
    return true;
  }

  private static UnsupportedOperationException fixed() {
    return new UnsupportedOperationException("this is fixed for every connection to a broker");
  }
}
