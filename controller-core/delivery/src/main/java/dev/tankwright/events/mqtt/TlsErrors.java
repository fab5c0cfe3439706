package dev.tankwright.events.mqtt;

import java.security.cert.CertPathBuilderException;
import java.security.cert.CertificateException;
import java.security.cert.CertificateExpiredException;
import java.security.cert.CertificateNotYetValidException;
import javax.net.ssl.SSLException;

/** Why an encrypted connection could not be made, in words that say what would be right. */
final class TlsErrors {
  private TlsErrors() {}

  /** The words for an error of TLS, or null if it is none. */
  static String of(BrokerUri broker, Throwable error) {
    boolean tls = false;
    for (Throwable cause = error; cause != null; cause = cause.getCause()) {
      tls |= cause instanceof SSLException;
      String words = certificate(cause);
      if (words != null) {
        return "the certificate of " + broker + " " + words;
      }
    }
    return tls
        ? "cannot establish an encrypted connection to " + broker + ": " + refusal(error)
        : null;
  }

  private static String certificate(Throwable cause) {
    if (cause instanceof CertificateExpiredException) {
      return "has expired (" + cause.getMessage() + "); renew it, or set this machine's clock";
    }
    if (cause instanceof CertificateNotYetValidException) {
      return "is not valid yet (" + cause.getMessage() + "); set this machine's clock";
    }
    if (cause instanceof CertPathBuilderException) {
      return "was issued by an authority that is not trusted here; name the authority's certificate"
          + " with --broker-ca";
    }
    if (cause instanceof CertificateException && isAboutAName(cause)) {
      return "was issued for another host ("
          + cause.getMessage()
          + "); use the name in the certificate, or have one issued for this name";
    }
    return null;
  }

  private static boolean isAboutAName(Throwable cause) {
    String text = String.valueOf(cause.getMessage());
    return cause.getCause() == null && (text.contains("No subject") || text.contains("No name"));
  }

  private static String refusal(Throwable error) {
    Throwable root = error;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    String text = String.valueOf(root.getMessage());
    if (text.contains("plaintext") || text.contains("Unsupported or unrecognized")) {
      return "this port is unencrypted; use the broker's TLS port, usually 8883";
    }
    if (text.contains("certificate_required") || text.contains("bad_certificate")) {
      return "the broker asks for a client certificate that it trusts ("
          + text
          + "); name one with --client-cert and --client-key";
    }
    return text + "; see the broker's log";
  }
}
