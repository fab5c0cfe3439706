package dev.tankwright.events.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BrokerAccessTest {
  private static final BrokerUri FAR = BrokerUri.parse("mqtt://broker.example");

  @TempDir private Path folder;

  @Test
  void plainTextBeyondThisMachineNeedsAWord() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> BrokerAccess.of(FAR));
    assertTrue(e.getMessage().contains("--plain-text"), e.getMessage());
    assertTrue(e.getMessage().contains("mqtts://broker.example"), e.getMessage());
    assertEquals(FAR, BrokerAccess.of(FAR, Optional.empty(), TlsIdentity.PLATFORM, true).uri());
    BrokerAccess.of(BrokerUri.parse("mqtt://localhost"));
    BrokerAccess.of(BrokerUri.parse("mqtts://broker.example"));
  }

  @Test
  void readsAPasswordFromAClosedFileAndShowsItNowhere() throws IOException {
    Path file = Files.writeString(folder.resolve("password"), "open sesame\nsecond line\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    Credentials credentials = Credentials.fromFile("bath-1", file);
    assertEquals("open sesame", new String(credentials.password()));
    BrokerAccess access =
        BrokerAccess.of(FAR, Optional.of(credentials), TlsIdentity.PLATFORM, true);
    PublisherConfig config = PublisherConfig.forDevice(access, "bath-1", 1);
    for (Object shown : new Object[] {credentials, access, config}) {
      assertFalse(shown.toString().contains("sesame"), shown::toString);
    }
  }

  @Test
  void refusesAPasswordThatEverybodyCanRead() throws IOException {
    Path file = Files.writeString(folder.resolve("password"), "open sesame");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    IOException e = assertThrows(IOException.class, () -> Credentials.fromFile("bath-1", file));
    assertTrue(e.getMessage().contains("chmod 600"), e.getMessage());
    assertFalse(e.getMessage().contains("sesame"), e.getMessage());
  }

  @Test
  void saysWhatIsWrongWithACertificateFile() throws IOException {
    Path file = Files.writeString(folder.resolve("ca.pem"), "no certificate");
    IOException e = assertThrows(IOException.class, () -> TlsIdentity.ofFiles(file, null, null));
    assertTrue(e.getMessage().contains("ca.pem"), e.getMessage());
    assertThrows(IOException.class, () -> TlsIdentity.ofFiles(null, file, null));
    assertThrows(IOException.class, () -> TlsIdentity.ofFiles(folder.resolve("gone"), null, null));
  }
}
