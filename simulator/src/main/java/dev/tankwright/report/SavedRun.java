package dev.tankwright.report;

import dev.tankwright.scenario.RunResult;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A run as its {@code result.json} tells of it. Immutable.
 *
 * @param label the folder of the run below the folder that was read, with slashes; empty when it is
 *     that folder itself
 * @param about what was run
 * @param controller the controller's parameters by key, in their base units
 * @param verdicts one per requirement, in the order of the scenario file
 * @param events what became of the events
 */
record SavedRun(
    String label,
    RunResult.About about,
    Map<String, Integer> controller,
    List<Verdict> verdicts,
    EventsSeen events) {

  SavedRun {
    controller = Collections.unmodifiableMap(new LinkedHashMap<>(controller));
    verdicts = List.copyOf(verdicts);
  }

  /** What the run is called beside others: its folder, or its scenario file without ending. */
  String name() {
    if (!label.isEmpty()) {
      return label;
    }
    int dot = about.file().lastIndexOf('.');
    return dot > 0 ? about.file().substring(0, dot) : about.file();
  }

  /**
   * Reads the document.
   *
   * @param file how the document is called in messages
   * @throws UnreadableException when it is cut off, of another kind or of another version
   */
  static SavedRun read(byte[] document, String label, String file) throws UnreadableException {
    JsonFields fields = JsonTree.object(document, file);
    String format = fields.text("format");
    if (!format.equals(ResultJson.FORMAT)) {
      throw new UnreadableException(
          file + ": a document of the kind '" + format + "', not '" + ResultJson.FORMAT + "'");
    }
    long version = fields.whole("format-version");
    if (version != ResultJson.FORMAT_VERSION) {
      throw new UnreadableException(
          file
              + ": format version "
              + version
              + "; this program reads "
              + ResultJson.FORMAT_VERSION
              + ", so read it with the program that wrote it, or run the scenario again");
    }
    List<Verdict> verdicts = new ArrayList<>();
    for (JsonFields each : fields.objects("requirements")) {
      verdicts.add(verdict(each));
    }
    RunResult.About about = about(fields.object("about"), file);
    return new SavedRun(
        label,
        about,
        fields.object("controller").allInts(),
        verdicts,
        events(fields.object("events")));
  }

  private static RunResult.About about(JsonFields fields, String file) throws UnreadableException {
    if (fields.text("version").isBlank()) {
      throw new UnreadableException(
          file + ", about: 'version' is empty; it should name the version that ran the scenario");
    }
    return new RunResult.About(
        fields.text("file"),
        fields.text("title"),
        fields.text("purpose"),
        fields.text("device"),
        fields.whole("seed"),
        fields.whole("duration-ms"),
        fields.text("started-at"),
        fields.text("version"),
        fields.text("sha256"));
  }

  private static Verdict verdict(JsonFields fields) throws UnreadableException {
    return new Verdict(
        fields.text("name"),
        fields.text("id"),
        fields.text("statement"),
        fields.constant(Verdict.Outcome.class, "outcome"),
        fields.wholeIfThere("moment-ms"),
        fields.numberIfThere("margin"),
        fields.text("margin-unit"),
        fields.text("detail"));
  }

  private static EventsSeen events(JsonFields fields) throws UnreadableException {
    return new EventsSeen(
        fields.truth("published"),
        fields.text("broker"),
        (int) fields.whole("sent"),
        (int) fields.whole("received"),
        fields.texts("undelivered"),
        (int) fields.whole("doubled"),
        fields.text("failure"));
  }
}
