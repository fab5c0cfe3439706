package dev.tankwright.events.mqtt;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The address of a broker: {@code mqtt://host[:port]} or {@code tcp://host[:port]} in plain text,
 * {@code mqtts://host[:port]}, {@code ssl://} or {@code tls://} encrypted.
 *
 * @param host name or address, IPv6 in brackets
 * @param port 1 to 65535
 * @param encrypted whether the connection is made over TLS
 */
public record BrokerUri(String host, int port, boolean encrypted) {
  /** The port registered for MQTT without encryption (IANA). */
  public static final int DEFAULT_PORT = 1883;

  /** The port registered for MQTT over TLS (IANA). */
  public static final int DEFAULT_TLS_PORT = 8883;

  private static final String RIGHT = "; give mqtts://host, or mqtt://host:1883";
  // RFC 5735: all of 127.0.0.0/8 is this machine.
  private static final Pattern LOOPBACK =
      Pattern.compile("localhost|127\\.\\d{1,3}\\.\\d{1,3}\\.\\d{1,3}|\\[::1]|\\[0:0:0:0:0:0:0:1]");

  /** An address in plain text. */
  public BrokerUri(String host, int port) {
    this(host, port, false);
  }

  /**
   * Reads an address from text; throws {@link IllegalArgumentException} that says what is wrong.
   */
  public static BrokerUri parse(String text) {
    try {
      return of(new URI(text.strip()));
    } catch (URISyntaxException e) {
      // not the text itself: it may hold a password
      throw new IllegalArgumentException(
          "this is not a broker URI (" + e.getReason() + ")" + RIGHT, e);
    }
  }

  /** Checks a URI; throws {@link IllegalArgumentException} that says what is wrong with it. */
  public static BrokerUri of(URI uri) {
    boolean encrypted = isEncrypted(uri);
    if (uri.getRawAuthority() != null && uri.getRawAuthority().contains("@")) {
      throw bad(uri.getScheme() + "://***", "carries a user name or password");
    }
    if (uri.getHost() == null) {
      throw bad(uri, "names no host");
    }
    boolean path = uri.getPath() != null && !uri.getPath().isEmpty() && !uri.getPath().equals("/");
    if (path || uri.getQuery() != null || uri.getFragment() != null) {
      throw bad(uri, "continues after host and port, which MQTT over TCP does not use");
    }
    int usual = encrypted ? DEFAULT_TLS_PORT : DEFAULT_PORT;
    int port = uri.getPort() == -1 ? usual : uri.getPort();
    if (port < 1 || port > 65535) {
      throw bad(uri, "has port " + port + ", which is not in 1..65535");
    }
    return new BrokerUri(uri.getHost(), port, encrypted);
  }

  private static boolean isEncrypted(URI uri) {
    String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
    return switch (scheme) {
      case "tcp", "mqtt" -> false;
      case "ssl", "mqtts", "tls" -> true;
      case "ws", "wss" -> throw bad(uri, "asks for WebSocket, which is not supported");
      case "" -> throw bad(uri, "has no scheme");
      default -> throw bad(uri, "has the unknown scheme '" + scheme + "'");
    };
  }

  private static IllegalArgumentException bad(Object uri, String what) {
    return new IllegalArgumentException("broker URI '" + uri + "' " + what + RIGHT);
  }

  /** True when the host is this machine by its own name; no name is looked up for that. */
  public boolean isLoopback() {
    return LOOPBACK.matcher(host.toLowerCase(Locale.ROOT)).matches();
  }

  /** The address in the words of the client library. */
  String libraryAddress() {
    return (encrypted ? "ssl://" : "tcp://") + host + ":" + port;
  }

  @Override
  public String toString() {
    return (encrypted ? "mqtts://" : "tcp://") + host + ":" + port;
  }
}
