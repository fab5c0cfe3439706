package dev.tankwright.scenario.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** The files that make one scenario, in the order in which they are read. */
final class Sources {
  private final List<String> sums = new ArrayList<>();

  void add(byte[] content) {
    sums.add(sha256(content));
  }

  /**
   * SHA-256 of the only file; of several the SHA-256 of their sums, each in a line of its own, as
   * {@code sha256sum FILES | cut -c1-64 | sha256sum} gives it.
   */
  String checksum() {
    if (sums.size() == 1) {
      return sums.get(0);
    }
    return sha256((String.join("\n", sums) + "\n").getBytes(StandardCharsets.US_ASCII));
  }

  private static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java runtime has SHA-256", e);
    }
  }
}
