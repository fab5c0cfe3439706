package dev.tankwright.record;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of some octets, in lower-case hexadecimal. Source: FIPS 180-4. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(byte[] octets) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(octets));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(
          "this Java platform lacks SHA-256, which every one must have", e);
    }
  }
}
