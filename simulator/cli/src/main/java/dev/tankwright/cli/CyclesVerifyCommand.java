package dev.tankwright.cli;

import dev.tankwright.record.Finding;
import dev.tankwright.record.Records;
import dev.tankwright.record.Verification;
import java.io.IOException;
import java.util.List;
import picocli.CommandLine;

/** Verifies what is stored. */
@CommandLine.Command(
    name = "verify",
    description = "Walk through the chain of every device and hold every row to its event's text.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Exit code 1 says that something is wrong; every finding is named. A chain "
          + "shows that somebody has been at the events. Whoever can write all of them "
          + "anew can make one that holds."
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
      out().println(aside + " messages lie aside: see the table 'aside' for the reasons.");
    }
    if (devices.isEmpty()) {
      out().println("Nothing is recorded.");
    }
    return whole ? ExitCode.HELD : ExitCode.FAILED;
  }

  private boolean verify(Records records, String device) throws IOException {
    Verification.Result result = Verification.of(records, device);
    List<Finding> findings = result.findings();
    out()
        .printf(
            "%s: events %d to %d, %d there: %s%n",
            device,
            result.first(),
            result.last(),
            result.events(),
            findings.isEmpty() ? "whole" : findings.size() + " findings");
    for (Finding finding : findings) {
      out().println("  " + finding.kind() + ": " + finding.text());
    }
    return findings.isEmpty();
  }
}
