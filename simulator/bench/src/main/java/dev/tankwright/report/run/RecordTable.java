package dev.tankwright.report.run;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.text.ReadableName;
import java.io.IOException;
import java.io.UncheckedIOException;

/** A JSON document as a table: one row per value, inner documents under their own heading row. */
final class RecordTable {
  private final Html html = new Html();
  private final JsonParser parser;

  private RecordTable(JsonParser parser) {
    this.parser = parser;
  }

  /** The table; a document that is not JSON is shown as it is, with what is wrong with it. */
  static String of(String json) {
    if (json.isEmpty()) {
      return "<p>No cycle ended in this run, so there is no record.</p>\n";
    }
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      return new RecordTable(parser).table();
    } catch (JsonProcessingException e) {
      Html html = new Html().raw("<p class=\"is-failed\">The record is not valid JSON: ");
      html.text(e.getOriginalMessage()).raw("</p>\n<pre>").text(json).raw("</pre>\n");
      return html.toString();
    } catch (IOException e) {
      throw new UncheckedIOException("A text in memory cannot be read", e);
    }
  }

  private String table() throws IOException {
    html.raw("<table class=\"pairs\">\n<tbody>\n");
    parser.nextToken();
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      members(0);
    } else {
      value("", 0);
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  private void members(int depth) throws IOException {
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = ReadableName.spaced(parser.currentName());
      parser.nextToken();
      value(name, depth);
    }
  }

  private void elements(String name, int depth) throws IOException {
    int number = 0;
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      number++;
      value(name + " " + number, depth);
    }
    if (number == 0) {
      row(name, "none", depth);
    }
  }

  private void value(String name, int depth) throws IOException {
    switch (parser.currentToken()) {
      case START_OBJECT -> {
        row(name, "", depth);
        members(depth + 1);
      }
      case START_ARRAY -> elements(name, depth);
      case VALUE_TRUE -> row(name, "yes", depth);
      case VALUE_FALSE -> row(name, "no", depth);
      case VALUE_NULL -> row(name, "none", depth);
      default -> row(name, parser.getText(), depth);
    }
  }

  private void row(String name, String value, int depth) {
    html.raw("<tr><th scope=\"row\" class=\"in").raw(Math.min(depth, 3)).raw("\">").text(name);
    html.raw("</th><td>").text(value).raw("</td></tr>\n");
  }
}
