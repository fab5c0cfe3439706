package dev.tankwright.bench.trace;

import dev.tankwright.trace.Csv;
import dev.tankwright.trace.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * What became of a requirement that a scenario names by id, in a run of this build.
 *
 * @param scenario name of the file without its ending
 * @param requirement as {@code SR-01}
 * @param name what the scenario calls it
 * @param outcome {@code held}, {@code failed} or {@code not-exercised}
 */
public record ScenarioVerdict(String scenario, String requirement, String name, String outcome) {
  private static final Pattern CASE = Pattern.compile("(SR-\\d\\d) (.*)", Pattern.DOTALL);

  /**
   * Keeps the verdicts of a run for the trace, if the build asks for one.
   *
   * @param scenario its file
   * @param junitXml what the run wrote
   */
  public static void keep(Path scenario, Path junitXml) throws IOException {
    Optional<Part.Place> place = Part.Place.wanted();
    if (place.isPresent()) {
      String name = scenario.getFileName().toString().replaceFirst("\\.yaml$", "");
      // The part lies in a folder of the target, beside those of other virtual machines.
      Path target = place.get().file().getParent().getParent();
      Path file = folder(target).resolve(name + ".csv");
      Files.createDirectories(file.getParent());
      Files.writeString(file, asText(place.get().build(), parse(name, junitXml)));
    }
  }

  /** The verdicts that one build kept below a module's target. */
  static List<ScenarioVerdict> kept(Path target, String build) throws IOException {
    List<ScenarioVerdict> found = new ArrayList<>();
    if (!Files.isDirectory(folder(target))) {
      return found;
    }
    try (Stream<Path> files = Files.list(folder(target))) {
      for (Path file : files.sorted().toList()) {
        List<List<String>> rows = Csv.parse(Files.readString(file));
        if (rows.get(0).equals(List.of("build", build))) {
          rows.stream().skip(1).map(ScenarioVerdict::of).forEach(found::add);
        }
      }
    }
    return found;
  }

  static List<ScenarioVerdict> parse(String scenario, Path junitXml) throws IOException {
    List<ScenarioVerdict> found = new ArrayList<>();
    NodeList cases = document(junitXml).getElementsByTagName("testcase");
    for (int i = 0; i < cases.getLength(); i++) {
      Element one = (Element) cases.item(i);
      Matcher name = CASE.matcher(one.getAttribute("name"));
      if (name.matches()) {
        Element failure = (Element) one.getElementsByTagName("failure").item(0);
        String outcome = failure == null ? "held" : failure.getAttribute("type");
        found.add(new ScenarioVerdict(scenario, name.group(1), name.group(2), outcome));
      }
    }
    return found;
  }

  private static Element document(Path xml) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      return factory.newDocumentBuilder().parse(xml.toFile()).getDocumentElement();
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(xml + " is no XML: " + e.getMessage(), e);
    }
  }

  private static String asText(String build, List<ScenarioVerdict> verdicts) {
    StringBuilder out = new StringBuilder(Csv.row("build", build));
    verdicts.forEach(v -> out.append(Csv.row(v.scenario, v.requirement, v.name, v.outcome)));
    return out.toString();
  }

  private static ScenarioVerdict of(List<String> row) {
    return new ScenarioVerdict(row.get(0), row.get(1), row.get(2), row.get(3));
  }

  private static Path folder(Path target) {
    return target.resolve("requirement-scenarios");
  }
}
