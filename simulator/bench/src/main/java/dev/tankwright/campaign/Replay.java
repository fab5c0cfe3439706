package dev.tankwright.campaign;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioWriter;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.profile.ProfileText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One case as files that {@code tankwright run} replays with the same verdicts: the scenario, and
 * the profile of its bath beside it. Immutable.
 *
 * @param names names of the files, the scenario's first
 * @param texts their content, in the same order
 */
public record Replay(List<String> names, List<String> texts) {
  private static final int LONGEST_TITLE = 120;
  private static final int LONGEST_PURPOSE = 1000;

  /** Keeps its own copies. */
  public Replay {
    names = List.copyOf(names);
    texts = List.copyOf(texts);
  }

  /** A case of a campaign by its number. */
  public static Replay of(Plan plan, String campaign, int number) {
    Variation variation = plan.variation(number);
    Setting setting = plan.setting(number);
    String stem = "case-" + number;
    String title = "Case " + number + ": " + variation.cell() + ", " + variation.base().title();
    return of(variation, setting, stem, title, "Case " + number + " of " + campaign + ": ");
  }

  /**
   * A setting of a variation.
   *
   * @param stem the files' name without its ending
   * @param title the scenario's title, cut at what a file may hold
   * @param purpose what the purpose begins with; the setting in words follows
   */
  public static Replay of(
      Variation variation, Setting setting, String stem, String title, String purpose) {
    return of(variation.scenario(setting), stem, title, purpose + words(variation, setting));
  }

  /**
   * Any scenario.
   *
   * @param stem the files' name without its ending
   * @param title the scenario's title, cut at what a file may hold
   * @param purpose the scenario's purpose, likewise
   */
  public static Replay of(Scenario scenario, String stem, String title, String purpose) {
    List<String> names = new ArrayList<>(List.of(stem + ".yaml"));
    List<String> texts = new ArrayList<>();
    String profile =
        BuiltInBaths.names().stream()
            .filter(name -> BuiltInBaths.byName(name).orElseThrow().equals(scenario.bath()))
            .findFirst()
            .orElse(stem + "-bath.yaml");
    Scenario told = scenario.withTitle(cut(title, LONGEST_TITLE), cut(purpose, LONGEST_PURPOSE));
    texts.add(ScenarioWriter.text(told, profile));
    if (profile.endsWith(".yaml")) {
      names.add(profile);
      texts.add(ProfileText.of(scenario.bath()));
    }
    return new Replay(names, texts);
  }

  private static String cut(String text, int longest) {
    String line = text.replaceAll("\\s+", " ").strip();
    int points = line.codePointCount(0, line.length());
    return points <= longest ? line : line.substring(0, line.offsetByCodePoints(0, longest));
  }

  /** The setting in words. */
  private static String words(Variation variation, Setting setting) {
    return String.format(
        Locale.ROOT,
        "%s %d ms after %s is entered; heater %.2f %%, mains %.2f %%, room %.2f °C, control sensor"
            + " %.1f %% and cut-off sensor %.1f %% of class B, fill %.2f %%, relay delay %d ms.",
        variation.injection().name(),
        setting.delayMillis(),
        variation.phase(),
        100 * setting.value(Axis.HEATER),
        100 * setting.value(Axis.MAINS),
        setting.value(Axis.AMBIENT),
        100 * setting.value(Axis.CONTROL_SENSOR),
        100 * setting.value(Axis.CUT_OFF_SENSOR),
        100 * setting.value(Axis.FILL),
        Math.round(setting.value(Axis.RELAY_DELAY)));
  }
}
