package dev.tankwright.events.mqtt;

import java.util.Optional;

/**
 * Where a broker is and how a client makes itself known there. Immutable.
 *
 * @param uri the address
 * @param credentials user name and password, if any
 * @param tls whom to trust and what certificate to show; used only by an encrypted connection
 */
public record BrokerAccess(BrokerUri uri, Optional<Credentials> credentials, TlsIdentity tls) {

  /**
   * Access in plain text to this machine, or over TLS to any, without credentials.
   *
   * @throws IllegalArgumentException if the address is beyond this machine and in plain text
   */
  public static BrokerAccess of(BrokerUri uri) {
    return of(uri, Optional.empty(), TlsIdentity.PLATFORM, false);
  }

  /**
   * Access with all that there is to say.
   *
   * @param plainTextAllowed the explicit word that a connection beyond this machine may be in plain
   *     text
   * @throws IllegalArgumentException if that word is needed and missing, or if certificates are
   *     given for a connection in plain text
   */
  public static BrokerAccess of(
      BrokerUri uri, Optional<Credentials> credentials, TlsIdentity tls, boolean plainTextAllowed) {
    if (!uri.encrypted() && !uri.isLoopback() && !plainTextAllowed) {
      throw new IllegalArgumentException(
          uri
              + " is on another machine and unencrypted: anyone on the network could read and"
              + " change events; use mqtts://"
              + uri.host()
              + ", or allow it with --plain-text");
    }
    if (!uri.encrypted() && tls != TlsIdentity.PLATFORM) {
      throw new IllegalArgumentException(
          "certificates are given, but " + uri + " is in plain text; use mqtts://" + uri.host());
    }
    return new BrokerAccess(uri, credentials, tls);
  }

  @Override
  public String toString() {
    return uri.toString();
  }
}
