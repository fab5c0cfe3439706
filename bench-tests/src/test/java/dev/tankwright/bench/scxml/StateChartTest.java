package dev.tankwright.bench.scxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import dev.tankwright.controller.sequence.Trigger;
import dev.tankwright.report.statechart.StateChartXml;
import java.io.IOException;
import java.io.StringReader;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.SAXException;

/** The state chart against the rules of SCXML 1.0 and against the controller's own table. */
class StateChartTest {
  private final String document = StateChartXml.document();
  private final FlatChart chart = new FlatChart(document);

  @Test
  @DisplayName("the document keeps the rules of SCXML 1.0 for what it uses")
  void valid() throws Exception {
    validate(document);
  }

  static Stream<Arguments> breaches() {
    return Stream.of(
        Arguments.of("another version", " version=\"1.0\"", " version=\"1.1\""),
        Arguments.of("no version", " version=\"1.0\"", ""),
        Arguments.of("another namespace", "2005/07/scxml", "2005/07/other"),
        Arguments.of("a beginning that is no state", "initial=\"SELF_TEST\"", "initial=\"OFF\""),
        Arguments.of("a target that is no state", "target=\"DRAINING\"", "target=\"EMPTYING\""),
        Arguments.of("two states of one id", "<state id=\"PAUSED\"", "<state id=\"CLEANING\""),
        Arguments.of("a transition without event", " event=\"CLEANED\"", ""),
        Arguments.of("an event of no name", "event=\"CLEANED\"", "event=\"cleaned!\""),
        Arguments.of("a transition without target", " target=\"DRAINING\"", ""),
        Arguments.of("a transition outside of states", "</scxml>", "<transition/></scxml>"),
        Arguments.of("an unknown element", "</scxml>", "<phase/></scxml>"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("breaches")
  @DisplayName("a document that breaks a rule is refused")
  void refused(String name, String right, String wrong) {
    assertTrue(document.contains(right), right);
    String broken = document.replace(right, wrong);
    assertThrows(SAXException.class, () -> validate(broken), name);
  }

  @Test
  @DisplayName("every phase is a state, and every line of the table one transition with its reason")
  void sameAsTheTable() {
    assertEquals(Arrays.stream(Phase.values()).map(Phase::name).toList(), chart.states());
    assertEquals("SELF_TEST", chart.initial());
    List<FlatChart.Arrow> wanted =
        Arrays.stream(Phase.values()).flatMap(StateChartTest::linesFrom).toList();
    assertEquals(wanted, chart.arrows());
    assertEquals(PhaseTable.lines().size(), chart.arrows().size());
  }

  private static Stream<FlatChart.Arrow> linesFrom(Phase phase) {
    return PhaseTable.lines().stream()
        .filter(line -> line.from() == phase)
        .map(StateChartTest::arrow);
  }

  private static FlatChart.Arrow arrow(Transition line) {
    return new FlatChart.Arrow(
        line.from().name(), line.trigger().name(), line.to().name(), line.why());
  }

  @Test
  @DisplayName("run by the rules of SCXML, any event in any state leads where the table leads")
  void sameNextState() {
    for (Phase phase : Phase.values()) {
      for (Trigger trigger : Trigger.values()) {
        String next = chart.in(phase.name()).send(trigger.name());
        assertEquals(PhaseTable.after(phase, trigger).name(), next, phase + " " + trigger);
      }
    }
  }

  @Test
  @DisplayName("a whole cycle, with a pause, a lockout and a drain, runs through the chart")
  void wholeDay() {
    assertEquals("SELF_TEST", chart.active());
    go("SELF_TEST_PASSED STARTED WARM_AND_NOT_DEGASSED", "DEGASSING");
    go("DEGASSED LID_OPENED", "PAUSED");
    go("STARTED RESUMED_CLEANING CLEANED", "COMPLETE");
    go("ACKNOWLEDGED STARTED WARM FAULT_LATCHED", "LOCKOUT");
    go("STARTED ACKNOWLEDGED RESET_ACCEPTED", "SELF_TEST");
    go("SELF_TEST_PASSED DRAIN_ASKED DRAINED", "STANDBY");
  }

  private void go(String events, String reached) {
    for (String event : events.split(" ", -1)) {
      chart.send(event);
    }
    assertEquals(reached, chart.active(), "after " + events);
  }

  @Test
  @DisplayName("an event that only begins like another one is not taken for it")
  void wholeWords() {
    assertTrue(FlatChart.matches("WARM", "WARM"));
    assertTrue(FlatChart.matches("A WARM.*", "WARM.AND"));
    assertFalse(FlatChart.matches("WARM", "WARM_AND_NOT_DEGASSED"));
    assertFalse(FlatChart.matches("DEGASSED", "DEGASSED_ONLY"));
  }

  private static void validate(String xml) throws SAXException, IOException {
    Schema schema =
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
            .newSchema(StateChartTest.class.getResource("scxml-subset.xsd"));
    schema.newValidator().validate(new StreamSource(new StringReader(xml)));
  }
}
