package dev.tankwright.events.mqtt;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;

/**
 * The address of a broker, {@code tcp://host[:port]} or its alias {@code mqtt://host[:port]}.
 *
 * @param host name or address, IPv6 in brackets
 * @param port 1 to 65535
 */
public record BrokerUri(String host, int port) {
  /** The port registered for MQTT without encryption (IANA). */
  public static final int DEFAULT_PORT = 1883;

  private static final String RIGHT = "; right would be tcp://host:1883 or mqtt://host";

  /**
   * Reads an address from text; throws {@link IllegalArgumentException} that says what is wrong.
   */
  public static BrokerUri parse(String text) {
    try {
      return of(new URI(text.strip()));
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(
          "'" + text + "' is not a broker URI (" + e.getReason() + ")" + RIGHT, e);
    }
  }

  /** Checks a URI; throws {@link IllegalArgumentException} that says what is wrong with it. */
  public static BrokerUri of(URI uri) {
    checkScheme(uri);
    if (uri.getHost() == null) {
      throw bad(uri, "names no host");
    }
    if (uri.getUserInfo() != null) {
      throw bad(uri.getScheme() + "://***@" + uri.getHost(), "carries a user name or password");
    }
    boolean path = uri.getPath() != null && !uri.getPath().isEmpty() && !uri.getPath().equals("/");
    if (path || uri.getQuery() != null || uri.getFragment() != null) {
      throw bad(uri, "goes on after host and port, which MQTT over TCP has no use for");
    }
    int port = uri.getPort() == -1 ? DEFAULT_PORT : uri.getPort();
    if (port < 1 || port > 65535) {
      throw bad(uri, "has port " + port + ", which is not in 1..65535");
    }
    return new BrokerUri(uri.getHost(), port);
  }

  private static void checkScheme(URI uri) {
    String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
    switch (scheme) {
      case "tcp", "mqtt" -> {}
      case "ssl", "mqtts", "tls" ->
          throw bad(uri, "asks for an encrypted connection, which is not supported yet");
      case "ws", "wss" -> throw bad(uri, "asks for WebSocket, which is not supported");
      case "" -> throw bad(uri, "has no scheme");
      default -> throw bad(uri, "has the unknown scheme '" + scheme + "'");
    }
  }

  private static IllegalArgumentException bad(Object uri, String what) {
    return new IllegalArgumentException("broker URI '" + uri + "' " + what + RIGHT);
  }

  @Override
  public String toString() {
    return "tcp://" + host + ":" + port;
  }
}
