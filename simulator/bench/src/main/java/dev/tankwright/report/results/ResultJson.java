package dev.tankwright.report.results;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.json.IndentedJson;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * What a run came to, as a JSON document that later runs are compared with: what was run, the
 * controller's parameters in their base unit, every verdict with its margin at full precision, the
 * delivery of events. {@link SavedRun} reads it back. The same run gives the same bytes.
 */
public final class ResultJson {
  /** What kind of document it is. */
  static final String FORMAT = "tankwright-run";

  /** Raised whenever an older program could misread a newer document. */
  static final int FORMAT_VERSION = 1;

  private final JsonGenerator json;

  private ResultJson(JsonGenerator json) {
    this.json = json;
  }

  /** The document, UTF-8. */
  public static byte[] of(RunResult run, EventsSeen seen) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 13);
    try (JsonGenerator generator = new JsonFactory().createGenerator(bytes)) {
      generator.setPrettyPrinter(IndentedJson.printer());
      new ResultJson(generator).document(run, seen);
    } catch (IOException e) {
      throw new UncheckedIOException("A document in memory cannot be written", e);
    }
    return bytes.toByteArray();
  }

  private void document(RunResult run, EventsSeen seen) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeNumberField("format-version", FORMAT_VERSION);
    about(run.about());
    json.writeObjectFieldStart("controller");
    for (Parameter parameter : Parameter.values()) {
      json.writeNumberField(parameter.key(), run.profile().get(parameter));
    }
    json.writeEndObject();
    json.writeArrayFieldStart("requirements");
    for (Verdict verdict : run.verdicts()) {
      verdict(verdict);
    }
    json.writeEndArray();
    events(seen);
    json.writeEndObject();
    json.writeRaw('\n');
  }

  private void about(RunResult.About about) throws IOException {
    json.writeObjectFieldStart("about");
    json.writeStringField("version", about.version());
    json.writeStringField("file", about.file());
    json.writeStringField("sha256", about.sha256());
    json.writeStringField("title", about.title());
    json.writeStringField("purpose", about.purpose());
    json.writeStringField("device", about.device());
    json.writeNumberField("seed", about.seed());
    json.writeNumberField("duration-ms", about.durationMillis());
    json.writeStringField("started-at", about.startedAt());
    json.writeEndObject();
  }

  private void verdict(Verdict verdict) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", verdict.name());
    json.writeStringField("id", verdict.id());
    json.writeStringField("statement", verdict.statement());
    json.writeStringField("outcome", verdict.outcome().name());
    if (verdict.momentMillis().isPresent()) {
      json.writeNumberField("moment-ms", verdict.momentMillis().getAsLong());
    }
    if (verdict.margin().isPresent()) {
      margin(verdict.margin().getAsDouble());
    }
    json.writeStringField("margin-unit", verdict.marginUnit());
    json.writeStringField("detail", verdict.detail());
    json.writeEndObject();
  }

  /** JSON knows no infinity, so it is a word. */
  private void margin(double margin) throws IOException {
    if (Double.isFinite(margin)) {
      json.writeNumberField("margin", margin);
    } else {
      json.writeStringField("margin", Double.toString(margin));
    }
  }

  private void events(EventsSeen seen) throws IOException {
    json.writeObjectFieldStart("events");
    json.writeBooleanField("published", seen.published());
    json.writeStringField("broker", seen.broker());
    json.writeNumberField("sent", seen.sent());
    json.writeNumberField("received", seen.received());
    json.writeNumberField("doubled", seen.doubled());
    json.writeArrayFieldStart("undelivered");
    for (String id : seen.undelivered()) {
      json.writeString(id);
    }
    json.writeEndArray();
    json.writeStringField("failure", seen.failure());
    json.writeEndObject();
  }
}
