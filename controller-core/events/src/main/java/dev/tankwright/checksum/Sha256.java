package dev.tankwright.checksum;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Checksums by SHA-256, FIPS 180-4. */
public final class Sha256 {
  private Sha256() {}

  /** A digest that has seen nothing yet. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform must have SHA-256", e);
    }
  }

  /** The end of a digest as text: 64 lower-case hexadecimal digits. */
  public static String text(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }

  /** The checksum of some octets, 64 lower-case hexadecimal digits. */
  public static String of(byte[] octets) {
    MessageDigest digest = digest();
    digest.update(octets);
    return text(digest);
  }

  /**
   * The checksum of a file, 64 lower-case hexadecimal digits.
   *
   * @throws IOException when the file cannot be read
   */
  public static String of(Path file) throws IOException {
    MessageDigest digest = digest();
    byte[] part = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int length = in.read(part); length >= 0; length = in.read(part)) {
        digest.update(part, 0, length);
      }
    }
    return text(digest);
  }
}
