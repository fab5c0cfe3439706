package dev.tankwright.report;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.Cell;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.Required;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.Shard;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Reads what {@link CampaignJson} writes. */
final class CampaignJsonReader {
  private CampaignJsonReader() {}

  /**
   * Reads the document.
   *
   * @param file how the document is called in messages
   * @throws UnreadableException when it is cut off, of another kind or of another version
   */
  static CampaignResults read(byte[] document, Path folder, String file)
      throws UnreadableException {
    JsonFields fields = JsonTree.object(document, file);
    fields.require(CampaignJson.FORMAT, CampaignJson.FORMAT_VERSION);
    Map<CaseOutcome, Integer> outcomes = new EnumMap<>(CaseOutcome.class);
    JsonFields counts = fields.object("outcomes");
    for (CaseOutcome outcome : CaseOutcome.values()) {
      outcomes.put(outcome, (int) counts.whole(outcome.name()));
    }
    List<RequirementSummary> requirements = new ArrayList<>();
    for (JsonFields each : fields.objects("requirements")) {
      requirements.add(requirement(each));
    }
    List<CellSummary> cells = new ArrayList<>();
    for (JsonFields each : fields.objects("cells")) {
      cells.add(cell(each));
    }
    About about = about(fields.object("about"), requirements);
    return new CampaignResults(folder, about, outcomes, cells, requirements);
  }

  private static About about(JsonFields fields, List<RequirementSummary> requirements)
      throws UnreadableException {
    Optional<Shard> shard = Shard.parse(fields.text("shard"));
    if (shard.isEmpty()) {
      throw fields.wrong("shard", "a share like 1/1 or 3/16");
    }
    List<Phase> phases = new ArrayList<>();
    for (String phase : fields.texts("phases")) {
      phases.add(fields.constant(Phase.class, "phases", phase));
    }
    return new About(
        fields.text("title"),
        fields.text("purpose"),
        fields.text("file"),
        fields.text("sha256"),
        fields.notBlank("version"),
        fields.texts("profiles"),
        fields.texts("scenarios"),
        fields.texts("faults"),
        phases,
        requirements.stream().map(RequirementSummary::required).toList(),
        fields.whole("seed"),
        (int) fields.whole("cases"),
        shard.get());
  }

  private static RequirementSummary requirement(JsonFields fields) throws UnreadableException {
    OptionalLong worst = fields.wholeIfThere("worst-case");
    return new RequirementSummary(
        new Required(fields.text("name"), fields.text("id"), fields.text("statement")),
        (int) fields.whole("held"),
        (int) fields.whole("failed"),
        (int) fields.whole("not-exercised"),
        margin(fields),
        worst.isPresent() ? OptionalInt.of((int) worst.getAsLong()) : OptionalInt.empty());
  }

  private static CellSummary cell(JsonFields fields) throws UnreadableException {
    Map<Fault, Integer> raised = new EnumMap<>(Fault.class);
    JsonFields counts = fields.object("raised");
    for (Map.Entry<String, Integer> entry : counts.allInts().entrySet()) {
      raised.put(fields.constant(Fault.class, "raised", entry.getKey()), entry.getValue());
    }
    return new CellSummary(
        new Cell(fields.text("fault"), fields.constant(Phase.class, "phase")),
        (int) fields.whole("cases"),
        (int) fields.whole("reached"),
        (int) fields.whole("detected"),
        raised,
        new CellSummary.Reaction(
            fields.wholeIfThere("least-reaction-ms"),
            fields.wholeIfThere("median-reaction-ms"),
            fields.wholeIfThere("most-reaction-ms")),
        fields.constant(CaseOutcome.class, "outcome"),
        (int) fields.whole("failed"),
        margin(fields),
        (int) fields.whole("worst-case"));
  }

  private static Optional<Margin> margin(JsonFields fields) throws UnreadableException {
    OptionalDouble value = fields.numberIfThere("least-margin");
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Margin(value.getAsDouble(), fields.text("margin-unit"), fields.text("margin-of")));
  }
}
