package dev.tankwright.report.junit;

import dev.tankwright.report.text.XmlText;
import java.io.ByteArrayOutputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes suites and cases as the XML that build servers read. Keeps all names apart. */
final class JunitWriter {
  private final XMLStreamWriter xml;
  private final Set<String> suites = new HashSet<>();
  private final Set<String> classes = new HashSet<>();

  private JunitWriter(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** The document, UTF-8. */
  static byte[] document(List<JunitSuite> suites) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(4096);
    try {
      XMLStreamWriter writer =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, "UTF-8");
      new JunitWriter(writer).write(suites);
      writer.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("The verdicts cannot be written as XML: " + e, e);
    }
    return bytes.toByteArray();
  }

  private void write(List<JunitSuite> all) throws XMLStreamException {
    int tests = all.stream().mapToInt(suite -> suite.cases().size()).sum();
    int failures = all.stream().mapToInt(JunitSuite::failures).sum();
    xml.writeStartDocument("UTF-8", "1.0");
    newLine(0);
    xml.writeStartElement("testsuites");
    attribute("name", "Tankwright");
    counts(tests, failures);
    for (JunitSuite suite : all) {
      suite(suite);
    }
    newLine(0);
    xml.writeEndElement();
    xml.writeEndDocument();
    newLine(0);
  }

  private void suite(JunitSuite suite) throws XMLStreamException {
    newLine(1);
    xml.writeStartElement("testsuite");
    attribute("name", unique(suite.name(), suites));
    counts(suite.cases().size(), suite.failures());
    properties(suite.properties());
    String className = unique(suite.className(), classes);
    Set<String> names = new HashSet<>();
    for (JunitSuite.Case each : suite.cases()) {
      oneCase(each, className, names);
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

  private void properties(Map<String, String> properties) throws XMLStreamException {
    newLine(2);
    xml.writeStartElement("properties");
    for (Map.Entry<String, String> property : properties.entrySet()) {
      newLine(3);
      xml.writeEmptyElement("property");
      attribute("name", property.getKey());
      attribute("value", property.getValue());
    }
    newLine(2);
    xml.writeEndElement();
  }

  private void oneCase(JunitSuite.Case each, String className, Set<String> names)
      throws XMLStreamException {
    newLine(2);
    xml.writeStartElement("testcase");
    attribute("classname", className);
    attribute("name", unique(each.name(), names));
    attribute("time", "0");
    newLine(3);
    xml.writeStartElement(each.isFailure() ? "failure" : "system-out");
    if (each.isFailure()) {
      attribute("type", each.type());
      attribute("message", each.message());
    }
    xml.writeCharacters(XmlText.clean(each.account()));
    xml.writeEndElement();
    newLine(2);
    xml.writeEndElement();
  }

  /** Cleaned first: names that differ only in what a name may not hold would be the same. */
  private static String unique(String name, Set<String> taken) {
    String clean = XmlText.line(name);
    return clean + UniqueNames.suffix(clean, taken);
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, XmlText.line(value));
  }

  private void newLine(int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }
}
