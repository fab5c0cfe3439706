package dev.tankwright.bench.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** An authority of its own and certificates by it, made with OpenSSL's command. */
final class Certificates {
  private static final List<String> NEW_KEY =
      List.of("-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes");

  private final Path folder;

  private Certificates(Path folder) {
    this.folder = folder;
  }

  /** Makes the authority ca.pem. */
  static Certificates in(Path folder) throws IOException {
    Certificates made = new Certificates(folder);
    List<String> command = new ArrayList<>(List.of("openssl", "req", "-x509"));
    command.addAll(NEW_KEY);
    command.addAll(
        List.of(
            "-keyout", "ca.key", "-out", "ca.pem", "-subj", "/CN=Test authority", "-days", "5"));
    made.run(command);
    return made;
  }

  /**
   * Makes NAME.pem and NAME.key.
   *
   * @param subject the common name
   * @param alternative the subject's alternative name, as OpenSSL takes it
   * @param days how long it is valid from now on; below 0, it has expired
   */
  void make(String name, String subject, String alternative, int days) throws IOException {
    List<String> ask = new ArrayList<>(List.of("openssl", "req"));
    ask.addAll(NEW_KEY);
    ask.addAll(List.of("-keyout", name + ".key", "-out", name + ".csr", "-subj", "/CN=" + subject));
    run(ask);
    Files.writeString(folder.resolve(name + ".ext"), "subjectAltName=" + alternative + "\n");
    run(
        List.of(
            "openssl",
            "x509",
            "-req",
            "-in",
            name + ".csr",
            "-CA",
            "ca.pem",
            "-CAkey",
            "ca.key",
            "-CAcreateserial",
            "-days",
            String.valueOf(days),
            "-extfile",
            name + ".ext",
            "-out",
            name + ".pem"));
  }

  private void run(List<String> command) throws IOException {
    Path log = folder.resolve("log of tools.txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    try {
      process.waitFor(60, TimeUnit.SECONDS);
      String said = Files.readString(log);
      assertEquals(0, process.exitValue(), () -> command + ": " + said);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
