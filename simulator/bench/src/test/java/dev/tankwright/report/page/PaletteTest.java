package dev.tankwright.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Contrast by WCAG 2.1: at least 4.5 for text (success criterion 1.4.3) and 3 for what is drawn
 * (1.4.11), with relative luminance as the standard defines it.
 */
class PaletteTest {
  private static final String[] GROUNDS = {"ground", "surface"};
  private static final String[] TEXTS = {"ink", "muted", "accent", "held", "failed", "open"};
  private static final String[] DRAWN = {
    "liquid",
    "measured",
    "setpoint",
    "limit",
    "activity",
    "gas",
    "volume",
    "action",
    "event",
    "fault",
    "failed",
    "wall",
    "lane-heat",
    "lane-sound",
    "lane-water",
    "lane-state"
  };

  private static final String[] PHASES = {
    "self-test",
    "standby",
    "heating",
    "degassing",
    "cleaning",
    "paused",
    "complete",
    "draining",
    "lockout"
  };

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void textStandsOutFromEveryGround(boolean dark) {
    Map<String, Integer> palette = palette(dark);
    for (String text : TEXTS) {
      for (String ground : GROUNDS) {
        contrast(palette, text, ground, 4.5);
      }
    }
    for (String outcome : new String[] {"held", "failed", "open"}) {
      contrast(palette, outcome, outcome + "-tint", 4.5);
      contrast(palette, "ink", outcome + "-tint", 4.5);
      contrast(palette, "on-fill", outcome + "-fill", 4.5);
    }
    contrast(palette, "muted", "open-tint", 4.5);
    contrast(palette, "accent", "failed-tint", 4.5);
    contrast(palette, "accent", "open-tint", 4.5);
    for (String phase : PHASES) {
      contrast(palette, "phase-ink", "phase-" + phase, 4.5);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whatIsDrawnStandsOut(boolean dark) {
    Map<String, Integer> palette = palette(dark);
    for (String drawn : DRAWN) {
      contrast(palette, drawn, "surface", 3);
    }
  }

  /** The steps of the matrix are told apart by lightness alone, whatever colours a reader sees. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void stepsOfTheMatrixDifferInLightness(boolean dark) {
    Map<String, Integer> palette = palette(dark);
    String[] steps = {"heat-ample", "heat-fair", "heat-close", "heat-tight"};
    for (int i = 0; i < steps.length; i++) {
      contrast(palette, steps[i] + "-ink", steps[i], 4.5);
      if (i > 0) {
        contrast(palette, steps[i], steps[i - 1], 1.25);
        boolean darker = luminance(palette.get(steps[i])) < luminance(palette.get(steps[i - 1]));
        assertEquals(!dark, darker, "tighter is further from the page: " + steps[i]);
      }
    }
    contrast(palette, "held", "held-tint", 4.5);
  }

  /** Worked examples of contrast that follow from the definition. */
  @ParameterizedTest
  @CsvSource({"0x000000, 0xffffff, 21", "0xffffff, 0xffffff, 1", "0x777777, 0xffffff, 4.48"})
  void measuresContrastAsDefined(String one, String other, double ratio) {
    assertEquals(ratio, ratio(Integer.decode(one), Integer.decode(other)), 0.005);
  }

  private static void contrast(
      Map<String, Integer> palette, String front, String back, double least) {
    double ratio = ratio(palette.get(front), palette.get(back));
    assertTrue(ratio >= least, front + " on " + back + ": " + ratio + ", least " + least);
  }

  private static double ratio(int one, int other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int component) {
    double value = (component & 0xFF) / 255.0;
    return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }

  private static Map<String, Integer> palette(boolean dark) {
    String css = Resource.own("palette.css");
    int darkPart = css.indexOf("@media");
    Map<String, Integer> palette = new HashMap<>();
    Matcher colour =
        Pattern.compile("--([a-z-]+): #([0-9a-f]{6});")
            .matcher(dark ? css.substring(darkPart) : css.substring(0, darkPart));
    while (colour.find()) {
      palette.put(colour.group(1), Integer.parseInt(colour.group(2), 16));
    }
    return palette;
  }
}
