package dev.tankwright.cli;

import dev.tankwright.record.Finding;
import dev.tankwright.record.Records;
import dev.tankwright.record.Verification;
import java.io.IOException;
import java.util.List;
import picocli.CommandLine;

/** Verifies the stored events. */
@CommandLine.Command(
    name = "verify",
    description = "Verify the chain of every device, and every row against its event's text.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Exit code 1 if there are findings; each is listed. The chain reveals altered "
          + "events, but not someone who can rewrite all of them."
    })
final class CyclesVerifyCommand extends RecordsCommand {
  @Override
  int read(Records records) throws IOException {
    List<String> devices = device().map(List::of).orElse(records.devices());
    boolean whole = true;
    for (String device : devices) {
      whole &= verify(records, device);
    }
    long aside = records.aside();
    if (aside > 0) {
      out().println(aside + " messages were set aside: see the table 'aside' for the reasons.");
    }
    if (devices.isEmpty()) {
      out().println("No events are recorded.");
    }
    return whole ? ExitCode.HELD : ExitCode.FAILED;
  }

  private boolean verify(Records records, String device) throws IOException {
    Verification.Result result = Verification.of(records, device);
    List<Finding> findings = result.findings();
    out()
        .printf(
            "%s: events %d to %d, %d stored: %s%n",
            device,
            result.first(),
            result.last(),
            result.events(),
            findings.isEmpty() ? "complete and unaltered" : findings.size() + " findings");
    for (Finding finding : findings) {
      out().println("  " + finding.kind() + ": " + finding.text());
    }
    return findings.isEmpty();
  }
}
