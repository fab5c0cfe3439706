package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.trace.Requirement;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class Crc32Test {
  // Catalogue of parametrised CRC algorithms, entry CRC-32/ISO-HDLC; the figure is from memory.
  private static final int PUBLISHED = 0xCBF43926;

  @Test
  @Requirement("SR-18")
  @DisplayName("the check value of the nine digits is the published one")
  void publishedValue() {
    int crc = Crc32.START;
    for (byte octet : "123456789".getBytes(StandardCharsets.US_ASCII)) {
      crc = Crc32.octet(crc, octet);
    }
    assertEquals(PUBLISHED, Crc32.end(crc));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("octets and words of any content give what another implementation gives")
  void agreesWithAnother() {
    Random random = new Random(7);
    for (int count = 0; count < 200; count++) {
      ByteBuffer octets = ByteBuffer.allocate(count * Integer.BYTES);
      octets.order(ByteOrder.LITTLE_ENDIAN);
      int byWord = Crc32.START;
      for (int i = 0; i < count; i++) {
        int word = random.nextInt();
        octets.putInt(word);
        byWord = Crc32.word(byWord, word);
      }
      int byOctet = Crc32.START;
      for (byte octet : octets.array()) {
        byOctet = Crc32.octet(byOctet, octet & 0xFF);
      }
      CRC32 other = new CRC32();
      other.update(octets.array());
      assertEquals((int) other.getValue(), Crc32.end(byWord), count + " words");
      assertEquals((int) other.getValue(), Crc32.end(byOctet), count + " words");
    }
  }
}
