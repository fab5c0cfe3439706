package dev.tankwright.report;

import dev.tankwright.scenario.RunResult;
import dev.tankwright.scenario.Verdict;
import java.io.ByteArrayOutputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Verdicts in the XML that build servers read since Ant's JUnit task: one suite per scenario, one
 * case per requirement. A requirement that failed and one that nothing put to the test are both
 * failures, told apart by their type. {@code time} is always 0, for build servers take it as wall
 * time and the run's is simulated.
 */
public final class JunitXml {
  private final XMLStreamWriter xml;
  private final Set<String> suites = new HashSet<>();

  private JunitXml(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** The document for these runs, UTF-8. */
  public static byte[] of(List<RunResult> runs) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(4096);
    try {
      XMLStreamWriter writer =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, "UTF-8");
      new JunitXml(writer).document(runs);
      writer.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("The verdicts cannot be written as XML: " + e, e);
    }
    return bytes.toByteArray();
  }

  private void document(List<RunResult> runs) throws XMLStreamException {
    int tests = 0;
    int failures = 0;
    for (RunResult run : runs) {
      tests += run.verdicts().size();
      failures += failures(run);
    }
    xml.writeStartDocument("UTF-8", "1.0");
    newLine(0);
    xml.writeStartElement("testsuites");
    attribute("name", "Tankwright");
    counts(tests, failures);
    for (RunResult run : runs) {
      suite(run);
    }
    newLine(0);
    xml.writeEndElement();
    xml.writeEndDocument();
    newLine(0);
  }

  private void suite(RunResult run) throws XMLStreamException {
    RunResult.About about = run.about();
    String suffix = Unique.suffix(about.title(), suites);
    newLine(1);
    xml.writeStartElement("testsuite");
    attribute("name", about.title() + suffix);
    counts(run.verdicts().size(), failures(run));
    properties(about);
    Set<String> cases = new HashSet<>();
    for (Verdict verdict : run.verdicts()) {
      oneCase(verdict, className(about) + suffix, cases);
    }
    newLine(1);
    xml.writeEndElement();
  }

  private void counts(int tests, int failures) throws XMLStreamException {
    attribute("tests", Integer.toString(tests));
    attribute("failures", Integer.toString(failures));
    attribute("errors", "0");
    attribute("skipped", "0");
    attribute("time", "0");
  }

  private void properties(RunResult.About about) throws XMLStreamException {
    newLine(2);
    xml.writeStartElement("properties");
    property("file", about.file());
    property("device", about.device());
    property("seed", Long.toString(about.seed()));
    property("version", about.version());
    property("sha256", about.sha256());
    property("started-at", about.startedAt());
    newLine(2);
    xml.writeEndElement();
  }

  private void property(String name, String value) throws XMLStreamException {
    newLine(3);
    xml.writeEmptyElement("property");
    attribute("name", name);
    attribute("value", value);
  }

  private void oneCase(Verdict verdict, String className, Set<String> cases)
      throws XMLStreamException {
    String name = verdict.id().isEmpty() ? verdict.name() : verdict.id() + " " + verdict.name();
    newLine(2);
    xml.writeStartElement("testcase");
    attribute("classname", className);
    attribute("name", name + Unique.suffix(name, cases));
    attribute("time", "0");
    newLine(3);
    xml.writeStartElement(verdict.outcome() == Verdict.Outcome.HELD ? "system-out" : "failure");
    if (verdict.outcome() != Verdict.Outcome.HELD) {
      boolean failed = verdict.outcome() == Verdict.Outcome.FAILED;
      attribute("type", failed ? "failed" : "not-exercised");
      attribute("message", verdict.detail());
    }
    xml.writeCharacters(XmlText.clean(account(verdict)));
    xml.writeEndElement();
    newLine(2);
    xml.writeEndElement();
  }

  private static String account(Verdict verdict) {
    StringBuilder out = new StringBuilder(verdict.statement());
    verdict
        .margin()
        .ifPresent(m -> out.append("\nmargin ").append(Words.margin(m, verdict.marginUnit())));
    verdict.momentMillis().ifPresent(m -> out.append("\nat ").append(Words.moment(m)));
    return out.append('\n').append(verdict.detail()).append('\n').toString();
  }

  private static int failures(RunResult run) {
    int failures = 0;
    for (Verdict verdict : run.verdicts()) {
      failures += verdict.outcome() == Verdict.Outcome.HELD ? 0 : 1;
    }
    return failures;
  }

  /** Build servers split class names at points, so the file's own points go. */
  private static String className(RunResult.About about) {
    int end = about.file().lastIndexOf('.');
    String stem = end > 0 ? about.file().substring(0, end) : about.file();
    return "scenario." + stem.replace('.', '_');
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, XmlText.clean(value));
  }

  private void newLine(int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }
}
