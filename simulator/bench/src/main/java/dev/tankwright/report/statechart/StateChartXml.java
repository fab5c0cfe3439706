package dev.tankwright.report.statechart;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import dev.tankwright.report.text.XmlText;

/**
 * The controller's table of phases as State Chart XML, W3C Recommendation of 1 September 2015: a
 * flat chart without data, in which every phase is a state, every trigger an event, and every line
 * of the table one transition. The reason of a line is a comment before it.
 */
public final class StateChartXml {
  /** The namespace of SCXML 1.0. */
  public static final String NAMESPACE = "http://www.w3.org/2005/07/scxml";

  private StateChartXml() {}

  /** The document; states in the order of the phases, transitions in the order of the table. */
  public static String document() {
    StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    xml.append("<scxml xmlns=\"").append(NAMESPACE).append("\" version=\"1.0\"");
    xml.append(" datamodel=\"null\" initial=\"").append(Phase.SELF_TEST).append("\">\n");
    for (Phase phase : Phase.values()) {
      state(xml, phase);
    }
    return xml.append("</scxml>\n").toString();
  }

  private static void state(StringBuilder xml, Phase phase) {
    xml.append("  <state id=\"").append(phase).append("\">\n");
    for (Transition line : PhaseTable.lines()) {
      if (line.from() == phase) {
        xml.append("    <!-- ").append(comment(line.why())).append(" -->\n");
        xml.append("    <transition event=\"").append(line.trigger());
        xml.append("\" target=\"").append(line.to()).append("\"/>\n");
      }
    }
    xml.append("  </state>\n");
  }

  /**
   * The text as a comment may hold it: XML 1.0, section 2.5, knows no escapes in comments and
   * forbids two hyphens in a row.
   */
  static String comment(String text) {
    return XmlText.clean(text).replaceAll("-(?=-)", "- ");
  }
}
