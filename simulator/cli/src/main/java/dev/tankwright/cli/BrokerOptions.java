package dev.tankwright.cli;

import dev.tankwright.delivery.BrokerEndpoints;
import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.Credentials;
import dev.tankwright.events.mqtt.TlsIdentity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;

/** The options that say where a broker is and how to get in there. No password is among them. */
final class BrokerOptions {
  /** Holds the password of {@code --user} when there is no {@code --password-file}. */
  static final String PASSWORD = "TANKWRIGHT_BROKER_PASSWORD";

  /** Holds the password of {@code --reader-user} when there is no file for it. */
  static final String READER_PASSWORD = "TANKWRIGHT_READER_PASSWORD";

  @CommandLine.Option(
      names = "--broker",
      paramLabel = "URI|none",
      description =
          "MQTT 3.1.1 broker for the cycle events, as mqtts://host or tcp://localhost:1883; none"
              + " publishes nothing.")
  private String broker;

  @CommandLine.Option(
      names = "--plain-text",
      description = "Allow an unencrypted connection to another machine.")
  private boolean plainText;

  @CommandLine.Option(
      names = "--broker-ca",
      paramLabel = "FILE",
      description =
          "Certificates (PEM) of the certificate authorities to trust for mqtts, and no others.")
  private Path authorities;

  @CommandLine.Option(
      names = "--client-cert",
      paramLabel = "FILE",
      description = "Client certificate (PEM) for the broker.")
  private Path certificate;

  @CommandLine.Option(
      names = "--client-key",
      paramLabel = "FILE",
      description = "Its private key (PEM, PKCS #8).")
  private Path key;

  @CommandLine.Option(
      names = "--user",
      paramLabel = "NAME",
      description = "User name; its password comes from a file or from " + PASSWORD + ".")
  private String user;

  @CommandLine.Option(
      names = "--password-file",
      paramLabel = "FILE",
      description = "File with the password on its first line, readable by its owner only.")
  private Path passwordFile;

  @CommandLine.Option(
      names = "--reader-user",
      paramLabel = "NAME",
      description =
          "User name for reading the events back, when --user may only write; password from a file"
              + " or from "
              + READER_PASSWORD
              + ".")
  private String readerUser;

  @CommandLine.Option(
      names = "--reader-password-file",
      paramLabel = "FILE",
      description = "File with that password.")
  private Path readerPasswordFile;

  /** What was given as {@code --broker}, or null. */
  String broker() {
    return broker;
  }

  /** Where the named broker is and how its two clients get in. */
  BrokerEndpoints endpoints(Map<String, String> environment) throws BadInputException {
    try {
      BrokerUri uri = BrokerUri.parse(broker);
      TlsIdentity tls = TlsIdentity.ofFiles(authorities, certificate, key);
      Optional<Credentials> own =
          credentials("--user", user, passwordFile, environment.get(PASSWORD));
      Optional<Credentials> reading =
          credentials(
              "--reader-user", readerUser, readerPasswordFile, environment.get(READER_PASSWORD));
      BrokerAccess publisher = BrokerAccess.of(uri, own, tls, plainText);
      return new BrokerEndpoints(
          publisher, BrokerAccess.of(uri, reading.or(() -> own), tls, plainText));
    } catch (IllegalArgumentException | IOException e) {
      throw new BadInputException("tankwright: --broker: " + e.getMessage());
    }
  }

  private static Optional<Credentials> credentials(
      String option, String name, Path file, String password) throws IOException {
    if (name == null) {
      if (file != null) {
        throw new IllegalArgumentException("a password file is given without " + option);
      }
      return Optional.empty();
    }
    if (file == null && password == null) {
      throw new IllegalArgumentException(
          option + " needs a password: give its file, or set the variable that --help names");
    }
    return Optional.of(
        file != null ? Credentials.fromFile(name, file) : Credentials.of(name, password));
  }
}
