package dev.tankwright.scenario.file;

import dev.tankwright.checksum.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The files that make one scenario, in the order in which they are read. */
final class Sources {
  private final List<String> sums = new ArrayList<>();

  void add(byte[] content) {
    sums.add(Sha256.of(content));
  }

  /**
   * SHA-256 of the only file; of several the SHA-256 of their sums, each in a line of its own, as
   * {@code sha256sum FILES | cut -c1-64 | sha256sum} gives it.
   */
  String checksum() {
    if (sums.size() == 1) {
      return sums.get(0);
    }
    return Sha256.of((String.join("\n", sums) + "\n").getBytes(StandardCharsets.US_ASCII));
  }
}
