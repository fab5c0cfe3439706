package dev.tankwright.bench.structure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A Maven project file, as it stands there. */
final class Pom {
  private final Path folder;
  private final Document document;

  private Pom(Path folder, Document document) {
    this.folder = folder;
    this.document = document;
  }

  /** The project file of a folder. */
  static Pom of(Path folder) throws IOException {
    return new Pom(folder, parsed(folder.resolve("pom.xml")));
  }

  /** The project file that is installed for this one, made when it was built. */
  Pom installed() throws IOException {
    Path file = folder.resolve("target").resolve("flattened-pom.xml");
    if (!Files.exists(file)) {
      throw new IllegalStateException(file + " is not there; run `mvn verify` from the root");
    }
    return new Pom(folder, parsed(file));
  }

  private static Document parsed(Path file) throws IOException {
    try {
      // Not aware of namespaces, so that names in paths need no prefix.
      return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    } catch (ParserConfigurationException | SAXException e) {
      throw new IllegalStateException(file + " is no XML", e);
    }
  }

  /** This project and every module below it. */
  List<Pom> withModules() throws IOException {
    List<Pom> found = new ArrayList<>(List.of(this));
    for (String module : texts("/project/modules/module")) {
      found.addAll(of(folder.resolve(module)).withModules());
    }
    return found;
  }

  String artifact() {
    return text("/project/artifactId");
  }

  /** The text at a path; empty when there is none. */
  String text(String path) {
    List<String> found = texts(path);
    return found.isEmpty() ? "" : found.get(0);
  }

  List<String> texts(String path) {
    return nodes(path).stream().map(Node::getTextContent).toList();
  }

  boolean has(String path) {
    return !nodes(path).isEmpty();
  }

  private List<Node> nodes(String path) {
    try {
      NodeList found =
          (NodeList)
              XPathFactory.newInstance()
                  .newXPath()
                  .evaluate(path, document, XPathConstants.NODESET);
      return IntStream.range(0, found.getLength()).mapToObj(found::item).toList();
    } catch (XPathExpressionException e) {
      throw new IllegalArgumentException("no path: " + path, e);
    }
  }
}
