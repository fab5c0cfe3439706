package dev.tankwright.report.page;

import dev.tankwright.checksum.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * The page's Content Security Policy, level 3: nothing is fetched from anywhere, and of scripts and
 * styles only those run whose hash is named, so text that came in from a file never does.
 */
final class Policy {
  private Policy() {}

  static String of(List<String> scripts, List<String> styles) {
    StringBuilder out = new StringBuilder("default-src 'none'; img-src data:; script-src");
    hashes(out, scripts);
    out.append("; style-src");
    hashes(out, styles);
    return out.append("; base-uri 'none'; form-action 'none'").toString();
  }

  private static void hashes(StringBuilder out, List<String> texts) {
    for (String text : texts) {
      byte[] sum = Sha256.digest().digest(text.getBytes(StandardCharsets.UTF_8));
      out.append(" 'sha256-").append(Base64.getEncoder().encodeToString(sum)).append('\'');
    }
  }
}
