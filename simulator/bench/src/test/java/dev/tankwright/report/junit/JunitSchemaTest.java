package dev.tankwright.report.junit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.report.SampleCampaign;
import dev.tankwright.report.SampleRun;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

/**
 * Documents against a schema of the form that build servers commonly read. The schema is written
 * from memory, for no standard describes the form; it also wants unique names and no control
 * characters.
 */
class JunitSchemaTest {
  private static final String ODD = "a\u0000b\u0085c\td\ne\u001B[31m\uFFFE <&\">]]>";
  private static final Schema SCHEMA = schema();

  @Test
  void acceptsRuns() {
    valid(JunitXml.of(List.of(SampleRun.of(), SampleRun.titled("Second"))));
    valid(JunitXml.of(SampleRun.of(), "single-faults/first.cycle"));
  }

  @Test
  void acceptsNamesThatAreTheSameOrDifferInControlCharactersOnly() {
    Verdict one = SampleRun.verdict("Same", "SR-01", Verdict.Outcome.HELD, 1, "K");
    Verdict other = SampleRun.verdict("Sa\u0001me", "SR-01", Verdict.Outcome.FAILED, -1, "K");
    Verdict odd = SampleRun.verdict(ODD, "", Verdict.Outcome.NOT_EXERCISED, 0, "K");
    RunResult run = SampleRun.with(List.of(one, other, one, odd));
    valid(JunitXml.of(List.of(run, run, run)));
  }

  @Test
  void acceptsCampaigns() {
    valid(CampaignJunit.of(SampleCampaign.of(4, 3)));
  }

  @Test
  void acceptsCampaignsWithOddNames() {
    CampaignResult odd = SampleCampaign.of(3, 2, ODD);
    valid(CampaignJunit.of(odd));
  }

  @Test
  void refusesWhatABuildServerWouldNotRead() {
    String good = new String(JunitXml.of(List.of(SampleRun.of())), StandardCharsets.UTF_8);
    invalid(good.replaceFirst("classname=\"[^\"]*\"", ""));
    invalid(good.replaceAll("testcase classname=\"([^\"]*)\" name=\"[^\"]*\"", twice()));
    invalid(good.replace("<failure type=\"failed\"", "<failure"));
    invalid(good.replaceFirst("name=\"SR-03 The", "name=\"&#x85;The"));
  }

  private static String twice() {
    return "testcase classname=\"$1\" name=\"same\"";
  }

  private static void valid(byte[] document) {
    assertDoesNotThrow(
        () -> validate(document), () -> new String(document, StandardCharsets.UTF_8));
  }

  private static void invalid(String document) {
    assertTrue(document.contains("<testsuites"));
    assertThrows(
        SAXException.class,
        () -> validate(document.getBytes(StandardCharsets.UTF_8)),
        () -> document);
  }

  private static void validate(byte[] document) throws SAXException, IOException {
    SCHEMA.newValidator().validate(new StreamSource(new ByteArrayInputStream(document)));
  }

  private static Schema schema() {
    try {
      SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      return factory.newSchema(JunitSchemaTest.class.getResource("junit.xsd"));
    } catch (SAXException e) {
      throw new AssertionError(e);
    }
  }
}
