package dev.tankwright.report;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.Shard;
import java.io.ByteArrayOutputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A campaign's result in the XML that build servers read: one suite for each fault with one case
 * for each phase, and one suite in which each requirement shows whether anything put it to the
 * test. Names are unique and hold no control characters; times are 0, for they are simulated.
 */
public final class CampaignJunit {
  private final XMLStreamWriter xml;
  private final CampaignResult result;
  private final Set<String> suites = new HashSet<>();

  /** One test case of the document. */
  private record Entry(String name, String failure, String type, String account) {
    boolean isFailure() {
      return !failure.isEmpty();
    }
  }

  private CampaignJunit(XMLStreamWriter xml, CampaignResult result) {
    this.xml = xml;
    this.result = result;
  }

  /** The document, UTF-8. */
  public static byte[] of(CampaignResult result) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try {
      XMLStreamWriter writer =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, "UTF-8");
      new CampaignJunit(writer, result).document();
      writer.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("The result cannot be written as XML: " + e, e);
    }
    return bytes.toByteArray();
  }

  private void document() throws XMLStreamException {
    List<Entry> cells = result.cells().stream().map(this::cell).toList();
    List<Entry> requirements = result.requirements().stream().map(this::requirement).toList();
    xml.writeStartDocument("UTF-8", "1.0");
    newLine(0);
    xml.writeStartElement("testsuites");
    attribute("name", result.about().title());
    counts(
        cells.size() + requirements.size(),
        cells.stream().filter(Entry::isFailure).count()
            + requirements.stream().filter(Entry::isFailure).count());
    for (String fault : result.about().faults()) {
      List<Entry> own =
          result.cells().stream()
              .filter(cell -> cell.cell().fault().equals(fault))
              .map(this::cell)
              .toList();
      if (!own.isEmpty()) {
        suite(fault, own);
      }
    }
    suite("requirements", requirements);
    newLine(0);
    xml.writeEndElement();
    xml.writeEndDocument();
    newLine(0);
  }

  private Entry cell(CellSummary cell) {
    String replay = result.about().replayCommand(cell.worstCase());
    String account = CampaignText.account(cell) + "\nreplay: " + replay + "\n";
    String name = cell.cell().toString();
    boolean whole = result.about().shard().equals(Shard.WHOLE);
    return switch (cell.outcome()) {
      case HELD -> new Entry(name, "", "", account);
      case FAILED -> {
        String failure = cell.failed() + " of " + cell.cases() + " cases failed; " + replay;
        yield new Entry(name, failure, "failed", account);
      }
      case NOT_REACHED -> shownNothing(name, whole, "not-reached", cell.outcome(), account);
      case NOT_EXERCISED -> shownNothing(name, whole, "not-exercised", cell.outcome(), account);
    };
  }

  /** In a share alone this is no failure: another share may show it. */
  private static Entry shownNothing(
      String name, boolean whole, String type, CaseOutcome outcome, String account) {
    String failure = whole ? CampaignText.words(outcome) + " in all cases" : "";
    return new Entry(name, failure, type, account);
  }

  private Entry requirement(RequirementSummary summary) {
    String id = summary.required().id();
    String name = id.isEmpty() ? summary.required().name() : id + " " + summary.required().name();
    boolean blamed = summary.isVacuous() && result.about().shard().equals(Shard.WHOLE);
    return new Entry(
        name,
        blamed ? "No case put it to the test" : "",
        "not-exercised",
        summary.required().statement() + "\n" + CampaignText.account(summary) + "\n");
  }

  private void suite(String name, List<Entry> entries) throws XMLStreamException {
    String suffix = Unique.suffix(name, suites);
    newLine(1);
    xml.writeStartElement("testsuite");
    attribute("name", name + suffix);
    counts(entries.size(), entries.stream().filter(Entry::isFailure).count());
    properties(result.about());
    Set<String> names = new HashSet<>();
    String className = "campaign." + stem(result.about().file()) + "." + name.replace('.', '_');
    for (Entry entry : entries) {
      newLine(2);
      xml.writeStartElement("testcase");
      attribute("classname", className + suffix);
      attribute("name", entry.name() + Unique.suffix(entry.name(), names));
      attribute("time", "0");
      newLine(3);
      xml.writeStartElement(entry.isFailure() ? "failure" : "system-out");
      if (entry.isFailure()) {
        attribute("type", entry.type());
        attribute("message", entry.failure());
      }
      xml.writeCharacters(XmlText.clean(entry.account()));
      xml.writeEndElement();
      newLine(2);
      xml.writeEndElement();
    }
    newLine(1);
    xml.writeEndElement();
  }

  private static String stem(String file) {
    int end = file.lastIndexOf('.');
    return (end > 0 ? file.substring(0, end) : file).replace('.', '_');
  }

  private void properties(About about) throws XMLStreamException {
    newLine(2);
    xml.writeStartElement("properties");
    property("file", about.file());
    property("sha256", about.sha256());
    property("version", about.version());
    property("shard", about.shard().toString());
    newLine(2);
    xml.writeEndElement();
  }

  private void property(String name, String value) throws XMLStreamException {
    newLine(3);
    xml.writeEmptyElement("property");
    attribute("name", name);
    attribute("value", value);
  }

  private void counts(long tests, long failures) throws XMLStreamException {
    attribute("tests", Long.toString(tests));
    attribute("failures", Long.toString(failures));
    attribute("errors", "0");
    attribute("skipped", "0");
    attribute("time", "0");
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, XmlText.clean(value));
  }

  private void newLine(int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }
}
