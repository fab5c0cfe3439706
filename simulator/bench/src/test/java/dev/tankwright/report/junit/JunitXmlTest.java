package dev.tankwright.report.junit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.report.SampleRun;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class JunitXmlTest {

  @Test
  void holdsOneSuitePerRunAndOneCasePerRequirement() throws Exception {
    Element root = parse(List.of(SampleRun.of(), SampleRun.titled("Second"))).getDocumentElement();
    assertEquals("testsuites", root.getTagName());
    assertEquals("8", root.getAttribute("tests"));
    assertEquals("4", root.getAttribute("failures"));
    List<Element> suites = children(root, "testsuite");
    assertEquals(2, suites.size());
    for (Element suite : suites) {
      assertEquals("4", suite.getAttribute("tests"));
      assertEquals("2", suite.getAttribute("failures"));
      assertEquals("0", suite.getAttribute("errors"));
      assertEquals("0", suite.getAttribute("skipped"));
      assertEquals(4, children(suite, "testcase").size());
    }
  }

  @Test
  void tellsFailedAndNotExercisedApart() throws Exception {
    List<Element> cases = cases(SampleRun.of());
    assertEquals(0, children(cases.get(0), "failure").size());
    assertTrue(cases.get(0).getTextContent().contains("margin 27.4 K\nat 38:12.12"));
    Element failed = children(cases.get(2), "failure").get(0);
    assertEquals("failed", failed.getAttribute("type"));
    assertEquals("The solution reached 40.6 \u00B0C.", failed.getAttribute("message"));
    assertEquals("not-exercised", children(cases.get(3), "failure").get(0).getAttribute("type"));
  }

  @Test
  void carriesWhatMakesTheRunRepeatable() throws Exception {
    Document document = parse(List.of(SampleRun.of()));
    NodeList properties = document.getElementsByTagName("property");
    List<String> found = new ArrayList<>();
    for (int i = 0; i < properties.getLength(); i++) {
      Element property = (Element) properties.item(i);
      found.add(property.getAttribute("name") + "=" + property.getAttribute("value"));
    }
    RunResult.About about = SampleRun.about("");
    assertTrue(
        found.containsAll(
            List.of("seed=7", "version=" + about.version(), "sha256=" + about.sha256())));
  }

  @Test
  void keepsEveryNameApart() throws Exception {
    Verdict verdict = SampleRun.verdict("Same", "SR-01", Verdict.Outcome.HELD, 1, "K");
    RunResult run = SampleRun.with(List.of(verdict, verdict, verdict));
    NodeList cases = parse(List.of(run, run)).getElementsByTagName("testcase");
    Set<String> names = new HashSet<>();
    for (int i = 0; i < cases.getLength(); i++) {
      Element each = (Element) cases.item(i);
      names.add(each.getAttribute("classname") + "#" + each.getAttribute("name"));
      assertFalse(each.getAttribute("classname").contains("v2.yaml"));
      assertEquals("0", each.getAttribute("time"));
    }
    assertEquals(6, names.size());
  }

  @Test
  void survivesTextThatIsNoXml() throws Exception {
    String bad = "a\u0000b\u001B[31m<c>&\"]]>\uD800\uFFFE \uD83D\uDE00";
    RunResult run =
        SampleRun.with(List.of(SampleRun.verdict(bad, "", Verdict.Outcome.FAILED, -1, "K")));
    assertEquals("ab[31m<c>&\"]]> \uD83D\uDE00", cases(run).get(0).getAttribute("name"));
  }

  private static List<Element> cases(RunResult run) throws Exception {
    Element root = parse(List.of(run)).getDocumentElement();
    return children(children(root, "testsuite").get(0), "testcase");
  }

  private static Document parse(List<RunResult> runs) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(JunitXml.of(runs)));
  }

  private static List<Element> children(Element parent, String tag) {
    List<Element> found = new ArrayList<>();
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && element.getTagName().equals(tag)) {
        found.add(element);
      }
    }
    return found;
  }
}
