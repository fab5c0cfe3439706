package dev.tankwright.cli;

import dev.tankwright.record.Export;
import dev.tankwright.record.Records;
import dev.tankwright.record.StoreException;
import dev.tankwright.report.files.UnwritableException;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/** Writes what is stored for other programs. */
@CommandLine.Command(
    name = "export",
    description = "Write events or cycle records as CSV or as one JSON document per line.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CyclesExportCommand extends RecordsCommand {
  /** What can be written. */
  enum What {
    events,
    records
  }

  /** How it can be written. */
  enum Form {
    csv,
    ndjson
  }

  @CommandLine.Parameters(
      paramLabel = "WHAT",
      description = "${COMPLETION-CANDIDATES}: every stored event, or one line per cycle.")
  private What what;

  @CommandLine.Option(
      names = "--as",
      paramLabel = "FORM",
      defaultValue = "csv",
      description =
          "${COMPLETION-CANDIDATES}: CSV (RFC 4180), or JSON as received, one document per line."
              + " Default: ${DEFAULT-VALUE}.")
  private Form form;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The file to write. Default: standard output.")
  private Path file;

  @Override
  int read(Records records) throws IOException {
    Export export = new Export(records, device());
    if (file == null) {
      write(export, out());
      out().flush();
      return ExitCode.HELD;
    }
    try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      write(export, writer);
    } catch (StoreException e) {
      throw e;
    } catch (IOException e) {
      throw new UnwritableException(file + " cannot be written (" + e + ")", e);
    }
    return ExitCode.HELD;
  }

  private void write(Export export, Appendable out) throws IOException {
    boolean csv = form == Form.csv;
    if (what == What.events && csv) {
      export.eventsAsCsv(out);
    } else if (what == What.events) {
      export.eventsAsNdjson(out);
    } else if (csv) {
      export.recordsAsCsv(out);
    } else {
      export.recordsAsNdjson(out);
    }
  }
}
