package dev.tankwright.report.statechart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StateChartXmlTest {
  @ParameterizedTest
  @CsvSource({
    "lid closed; time left, lid closed; time left",
    "a -- b, a - - b",
    "a --- b, a - - - b",
    "---->, - - - ->",
    "<b> & </b>, <b> & </b>",
    "a-b, a-b"
  })
  @DisplayName("a reason stands in a comment without ending it or breaking its rules")
  void comments(String why, String written) {
    assertEquals(written, StateChartXml.comment(why));
  }
}
