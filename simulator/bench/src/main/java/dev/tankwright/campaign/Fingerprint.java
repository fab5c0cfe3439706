package dev.tankwright.campaign;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioWriter;
import dev.tankwright.scenario.profile.ProfileText;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The checksum of all that decides a campaign's results, but for the version. */
final class Fingerprint {
  private Fingerprint() {}

  /** SHA-256, lower-case hexadecimal. */
  static String of(Campaign campaign) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      add(digest, campaign.content());
      for (Scenario base : campaign.bases()) {
        // Written out, so that what a scenario or profile takes from another file counts too.
        add(digest, ScenarioWriter.text(base, base.bath().name()));
        add(digest, ProfileText.of(base.bath()));
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java runtime has SHA-256", e);
    }
  }

  private static void add(MessageDigest digest, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update(Integer.toString(bytes.length).getBytes(StandardCharsets.UTF_8));
    digest.update((byte) '\n');
    digest.update(bytes);
  }
}
