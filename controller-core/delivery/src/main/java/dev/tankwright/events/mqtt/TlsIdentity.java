package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.List;
import javax.net.ssl.KeyManager;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManager;
import javax.net.ssl.TrustManagerFactory;

/**
 * Whom a client trusts and how it shows who it is, over TLS 1.2 or later. Immutable, thread-safe.
 */
public final class TlsIdentity {
  /** Trusts what the Java platform trusts, and shows no certificate. */
  public static final TlsIdentity PLATFORM = new TlsIdentity(null, null);

  // never stored: a key store in memory wants one
  private static final char[] IN_MEMORY = "in memory".toCharArray();

  private final KeyStore trusted;
  private final KeyStore own;

  private TlsIdentity(KeyStore trusted, KeyStore own) {
    this.trusted = trusted;
    this.own = own;
  }

  /**
   * From files in PEM.
   *
   * @param authorities certificates of the authorities that are trusted, and no others; null for
   *     the platform's
   * @param certificate this client's certificate and those between it and its authority, in this
   *     order; null for none
   * @param key the private key of that certificate, PKCS #8 without a pass phrase
   * @throws IOException if a file cannot be used, with what is wrong in it
   */
  public static TlsIdentity ofFiles(Path authorities, Path certificate, Path key)
      throws IOException {
    if ((certificate == null) != (key == null)) {
      throw new IOException("a client certificate needs its key; give both or neither");
    }
    try {
      KeyStore trusted = authorities == null ? null : trustStore(authorities);
      KeyStore own = certificate == null ? null : keyStore(certificate, key);
      return trusted == null && own == null ? PLATFORM : new TlsIdentity(trusted, own);
    } catch (GeneralSecurityException e) {
      throw new IOException("the certificates cannot be used: " + e.getMessage(), e);
    }
  }

  private static KeyStore trustStore(Path file) throws IOException, GeneralSecurityException {
    KeyStore store = empty();
    for (X509Certificate authority : PemFiles.certificates(file)) {
      store.setCertificateEntry("authority " + store.size(), authority);
    }
    return store;
  }

  private static KeyStore keyStore(Path certificate, Path key)
      throws IOException, GeneralSecurityException {
    List<X509Certificate> chain = PemFiles.certificates(certificate);
    PrivateKey secret = PemFiles.privateKey(key, chain.get(0).getPublicKey().getAlgorithm());
    KeyStore store = empty();
    store.setKeyEntry("client", secret, IN_MEMORY, chain.toArray(X509Certificate[]::new));
    return store;
  }

  private static KeyStore empty() throws IOException, GeneralSecurityException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    store.load(null, null);
    return store;
  }

  /** Makes connections that trust and show what this says. */
  SSLSocketFactory socketFactory() {
    try {
      SSLContext context = SSLContext.getInstance("TLS");
      context.init(keyManagers(), trustManagers(), null);
      return context.getSocketFactory();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("this Java platform does not provide TLS", e);
    }
  }

  private KeyManager[] keyManagers() throws GeneralSecurityException {
    if (own == null) {
      return new KeyManager[0];
    }
    KeyManagerFactory factory =
        KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    factory.init(own, IN_MEMORY);
    return factory.getKeyManagers();
  }

  private TrustManager[] trustManagers() throws GeneralSecurityException {
    TrustManagerFactory factory =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    factory.init(trusted);
    return factory.getTrustManagers();
  }

  @Override
  public String toString() {
    return "TlsIdentity["
        + (trusted == null ? "platform's trust" : "own trust")
        + (own == null ? "" : ", client certificate")
        + "]";
  }
}
