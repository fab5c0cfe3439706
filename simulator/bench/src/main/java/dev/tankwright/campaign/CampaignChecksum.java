package dev.tankwright.campaign;

import dev.tankwright.checksum.Sha256;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioWriter;
import dev.tankwright.scenario.profile.ProfileText;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;

/** The checksum of all that decides a campaign's results, but for the version. */
final class CampaignChecksum {
  private CampaignChecksum() {}

  /** SHA-256, lower-case hexadecimal. */
  static String of(Campaign campaign) {
    MessageDigest digest = Sha256.digest();
    add(digest, campaign.content());
    for (Scenario base : campaign.bases()) {
      // Written out, so that what a scenario or profile takes from another file counts too.
      add(digest, ScenarioWriter.text(base, base.bath().name()));
      add(digest, ProfileText.of(base.bath()));
    }
    return Sha256.text(digest);
  }

  private static void add(MessageDigest digest, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update(Integer.toString(bytes.length).getBytes(StandardCharsets.UTF_8));
    digest.update((byte) '\n');
    digest.update(bytes);
  }
}
