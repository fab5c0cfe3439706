package dev.tankwright.report.results;

import dev.tankwright.controller.board.Parameter;
import dev.tankwright.report.files.JsonFields;
import dev.tankwright.report.files.JsonTree;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
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
public record SavedRun(
    String label,
    RunResult.About about,
    Map<String, Integer> controller,
    List<Verdict> verdicts,
    EventsSeen events) {

  public SavedRun {
    controller = Collections.unmodifiableMap(new LinkedHashMap<>(controller));
    verdicts = List.copyOf(verdicts);
  }

  /** What the run is called beside others: its folder, or its scenario file without ending. */
  public String name() {
    if (!label.isEmpty()) {
      return label;
    }
    int dot = about.file().lastIndexOf('.');
    return dot > 0 ? about.file().substring(0, dot) : about.file();
  }

  /** A run that has just been made. */
  public static SavedRun of(String label, RunResult run, EventsSeen seen) {
    Map<String, Integer> controller = new LinkedHashMap<>();
    for (Parameter parameter : Parameter.values()) {
      controller.put(parameter.key(), run.profile().get(parameter));
    }
    return new SavedRun(label, run.about(), controller, run.verdicts(), seen);
  }

  /**
   * Reads the document.
   *
   * @param file how the document is called in messages
   * @throws UnreadableException when it is cut off, of another kind or of another version
   */
  public static SavedRun read(byte[] document, String label, String file)
      throws UnreadableException {
    JsonFields fields = JsonTree.object(document, file);
    fields.require(ResultJson.FORMAT, ResultJson.FORMAT_VERSION);
    List<Verdict> verdicts = new ArrayList<>();
    for (JsonFields each : fields.objects("requirements")) {
      verdicts.add(verdict(each));
    }
    RunResult.About about = about(fields.object("about"));
    return new SavedRun(
        label,
        about,
        fields.object("controller").allInts(),
        verdicts,
        events(fields.object("events")));
  }

  private static RunResult.About about(JsonFields fields) throws UnreadableException {
    return new RunResult.About(
        fields.text("file"),
        fields.text("title"),
        fields.text("purpose"),
        fields.text("device"),
        fields.whole("seed"),
        fields.whole("duration-ms"),
        fields.text("started-at"),
        fields.notBlank("version"),
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
