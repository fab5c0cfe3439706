package dev.tankwright.bench.scxml;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Comment;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A reader and runner of flat charts that knows nothing of the controller: what any other program
 * would make of the document. By SCXML 1.0, 3.13, of the transitions of the active state that an
 * event enables, the first in the document is taken; an event that enables none is dropped.
 */
final class FlatChart {
  private static final String SCXML = "http://www.w3.org/2005/07/scxml";

  private final List<String> states = new ArrayList<>();
  private final List<Arrow> arrows = new ArrayList<>();
  private final String initial;
  private String active;

  /**
   * A transition.
   *
   * @param from state that holds it
   * @param event what it waits for
   * @param target state that it leads to
   * @param comment the comment before it
   */
  record Arrow(String from, String event, String target, String comment) {}

  FlatChart(String document) {
    Element root = parse(document);
    initial = root.getAttribute("initial");
    active = initial;
    for (Element state : children(root, "state")) {
      states.add(state.getAttribute("id"));
      for (Element arrow : children(state, "transition")) {
        String event = arrow.getAttribute("event");
        String target = arrow.getAttribute("target");
        arrows.add(new Arrow(state.getAttribute("id"), event, target, commentBefore(arrow)));
      }
    }
  }

  String initial() {
    return initial;
  }

  List<String> states() {
    return List.copyOf(states);
  }

  List<Arrow> arrows() {
    return List.copyOf(arrows);
  }

  String active() {
    return active;
  }

  /** Makes a state the active one. */
  FlatChart in(String state) {
    active = state;
    return this;
  }

  /** Takes the transition that an event enables, if there is one, and tells the active state. */
  String send(String event) {
    for (Arrow arrow : arrows) {
      if (arrow.from().equals(active) && matches(arrow.event(), event)) {
        active = arrow.target();
        return active;
      }
    }
    return active;
  }

  /**
   * SCXML 1.0, 3.12.1: a descriptor matches an event whose name is the same, or goes on with a full
   * stop; several are separated by spaces.
   */
  static boolean matches(String descriptors, String event) {
    for (String descriptor : descriptors.split(" ", -1)) {
      String prefix = descriptor.replaceFirst("\\.\\*$", "");
      if (descriptor.equals("*") || event.equals(prefix) || event.startsWith(prefix + ".")) {
        return true;
      }
    }
    return false;
  }

  private static Element parse(String document) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      InputSource source = new InputSource(new StringReader(document));
      return factory.newDocumentBuilder().parse(source).getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalArgumentException("no XML: " + e.getMessage(), e);
    }
  }

  private static List<Element> children(Element parent, String name) {
    List<Element> found = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (SCXML.equals(node.getNamespaceURI()) && name.equals(node.getLocalName())) {
        found.add((Element) node);
      }
    }
    return found;
  }

  private static String commentBefore(Node node) {
    Node before = node.getPreviousSibling();
    while (before != null && before.getNodeType() == Node.TEXT_NODE) {
      before = before.getPreviousSibling();
    }
    return before instanceof Comment comment ? comment.getData().strip() : "";
  }
}
