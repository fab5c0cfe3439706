package dev.tankwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.Required;
import dev.tankwright.campaign.RequirementSummary;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalLong;

/**
 * What a campaign came to without its single cases, as a JSON document that later campaigns are
 * compared with. {@link CampaignJsonReader} reads it back. The same campaign gives the same bytes.
 */
final class CampaignJson {
  /** What kind of document it is. */
  static final String FORMAT = "tankwright-campaign";

  /** Raised whenever an older program could misread a newer document. */
  static final int FORMAT_VERSION = 1;

  private final JsonGenerator json;

  private CampaignJson(JsonGenerator json) {
    this.json = json;
  }

  /** The document, UTF-8. */
  static byte[] of(CampaignResults results) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try (JsonGenerator generator = new JsonFactory().createGenerator(bytes)) {
      DefaultIndenter lines = new DefaultIndenter(" ", "\n");
      generator.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
      new CampaignJson(generator).document(results);
    } catch (IOException e) {
      throw new UncheckedIOException("A document in memory cannot be written", e);
    }
    return bytes.toByteArray();
  }

  private void document(CampaignResults results) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeNumberField("format-version", FORMAT_VERSION);
    about(results.about());
    json.writeObjectFieldStart("outcomes");
    for (var entry : results.outcomes().entrySet()) {
      json.writeNumberField(entry.getKey().name(), entry.getValue());
    }
    json.writeEndObject();
    json.writeArrayFieldStart("requirements");
    for (RequirementSummary summary : results.requirements()) {
      requirement(summary);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cells");
    for (CellSummary cell : results.cells()) {
      cell(cell);
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
  }

  private void about(About about) throws IOException {
    json.writeObjectFieldStart("about");
    json.writeStringField("version", about.version());
    json.writeStringField("file", about.file());
    json.writeStringField("sha256", about.sha256());
    json.writeStringField("title", about.title());
    json.writeStringField("purpose", about.purpose());
    json.writeNumberField("seed", about.seed());
    json.writeNumberField("cases", about.cases());
    json.writeStringField("shard", about.shard().toString());
    texts("profiles", about.profiles());
    texts("scenarios", about.scenarios());
    texts("faults", about.faults());
    texts("phases", about.phases().stream().map(Enum::name).toList());
    json.writeEndObject();
  }

  private void texts(String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private void requirement(RequirementSummary summary) throws IOException {
    Required required = summary.required();
    json.writeStartObject();
    json.writeStringField("name", required.name());
    json.writeStringField("id", required.id());
    json.writeStringField("statement", required.statement());
    json.writeNumberField("held", summary.held());
    json.writeNumberField("failed", summary.failed());
    json.writeNumberField("not-exercised", summary.notExercised());
    if (summary.leastMargin().isPresent()) {
      margin(summary.leastMargin().get());
    }
    if (summary.worstCase().isPresent()) {
      json.writeNumberField("worst-case", summary.worstCase().getAsInt());
    }
    json.writeEndObject();
  }

  private void cell(CellSummary cell) throws IOException {
    json.writeStartObject();
    json.writeStringField("fault", cell.cell().fault());
    json.writeStringField("phase", cell.cell().phase().name());
    json.writeNumberField("cases", cell.cases());
    json.writeNumberField("reached", cell.reached());
    json.writeNumberField("detected", cell.detected());
    json.writeObjectFieldStart("raised");
    for (var entry : cell.faults().entrySet()) {
      json.writeNumberField(entry.getKey().name(), entry.getValue());
    }
    json.writeEndObject();
    time("least-reaction-ms", cell.reaction().least());
    time("median-reaction-ms", cell.reaction().median());
    time("most-reaction-ms", cell.reaction().most());
    json.writeStringField("outcome", cell.outcome().name());
    json.writeNumberField("failed", cell.failed());
    if (cell.leastMargin().isPresent()) {
      margin(cell.leastMargin().get());
    }
    json.writeNumberField("worst-case", cell.worstCase());
    json.writeEndObject();
  }

  private void time(String name, OptionalLong time) throws IOException {
    if (time.isPresent()) {
      json.writeNumberField(name, time.getAsLong());
    }
  }

  private void margin(Margin margin) throws IOException {
    if (Double.isFinite(margin.value())) {
      json.writeNumberField("least-margin", margin.value());
    } else {
      json.writeStringField("least-margin", Double.toString(margin.value()));
    }
    json.writeStringField("margin-unit", margin.unit());
    json.writeStringField("margin-of", margin.requirement());
  }
}
