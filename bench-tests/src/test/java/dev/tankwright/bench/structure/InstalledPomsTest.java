package dev.tankwright.bench.structure;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What other projects get with each artifact, and that they need nothing of this build for it. */
class InstalledPomsTest {
  private static final String BOM = "tankwright-bom";
  private static final String ANY = "/project/dependencies/dependency";

  /** What each artifact brings; a question mark follows what it brings only to those who ask. */
  private static final Map<String, Set<String>> BRINGS =
      Map.ofEntries(
          entry("tankwright-controller", Set.of()),
          entry("tankwright-events", Set.of("tankwright-controller", "jackson-core")),
          entry(
              "tankwright-delivery",
              Set.of(
                  "tankwright-events",
                  "org.eclipse.paho.client.mqttv3",
                  "sqlite-jdbc",
                  "slf4j-api")),
          entry(
              "tankwright-bench",
              Set.of(
                  "tankwright-controller",
                  "tankwright-events",
                  "snakeyaml-engine",
                  "jackson-core",
                  "hipparchus-optim",
                  "asm",
                  "commons-csv",
                  "uplot",
                  "junit-jupiter-api?",
                  "junit-jupiter-params?")),
          entry(
              "tankwright-facility",
              Set.of(
                  "tankwright-bench",
                  "tankwright-delivery",
                  "jackson-core",
                  "org.eclipse.paho.client.mqttv3",
                  "sqlite-jdbc",
                  "postgresql",
                  "commons-csv",
                  "artemis-server",
                  "artemis-mqtt-protocol",
                  "commons-logging",
                  "commons-lang3")));

  private static final Path ROOT = Path.of(System.getProperty("tankwright.root"));

  private final Pom parent = Pom.of(ROOT);
  private final String version = parent.text("/project/version");
  private final Map<String, Pom> installed = installed();

  InstalledPomsTest() throws IOException {}

  private Map<String, Pom> installed() throws IOException {
    Map<String, Pom> found = new TreeMap<>();
    for (Pom module : parent.withModules()) {
      if (module.text("/project/properties/artifacts.skip").equals("false")) {
        found.put(module.artifact(), module.installed());
      }
    }
    return found;
  }

  @Test
  @DisplayName("who takes the controller gets no dependency")
  void controllerBringsNothing() {
    assertFalse(installed.get("tankwright-controller").has(ANY));
  }

  @Test
  @DisplayName("every artifact brings what is named here and no more, none of it for tests")
  void dependencies() {
    Map<String, Set<String>> found = new TreeMap<>();
    for (Pom pom : installed.values()) {
      assertFalse(pom.has(ANY + "[scope='test' or scope='provided']"), pom.artifact());
      Set<String> brings = new TreeSet<>(pom.texts(ANY + "[not(optional)]/artifactId"));
      pom.texts(ANY + "[optional='true']/artifactId").forEach(name -> brings.add(name + "?"));
      found.put(pom.artifact(), brings);
    }
    assertEquals(Set.of(), found.remove(BOM));
    assertEquals(BRINGS.keySet(), found.keySet());
    BRINGS.forEach((artifact, brings) -> assertEquals(brings, found.get(artifact), artifact));
  }

  @Test
  @DisplayName("no artifact needs the parent, a repository or a variable of this build")
  void nothingOfThisBuild() {
    for (Pom pom : installed.values()) {
      String name = pom.artifact();
      assertEquals("dev.tankwright", pom.text("/project/groupId"), name);
      assertEquals(version, pom.text("/project/version"), name);
      assertEquals("Apache-2.0", pom.text("/project/licenses/license/name"), name);
      for (String ours : List.of("parent", "build", "properties", "repositories", "profiles")) {
        assertFalse(pom.has("/project/" + ours), name + " has " + ours);
      }
      assertFalse(pom.has(ANY + "[not(version) or contains(version, '$')]"), name);
    }
  }

  @Test
  @DisplayName("the bill of materials names every artifact, in the version of all")
  void billOfMaterials() {
    String managed = "/project/dependencyManagement/dependencies/dependency";
    Pom bom = installed.get(BOM);
    assertEquals(BRINGS.keySet(), new TreeSet<>(bom.texts(managed + "/artifactId")));
    assertEquals(Set.of("${project.version}"), new TreeSet<>(bom.texts(managed + "/version")));
  }

  @Test
  @DisplayName("the example is a project outside, in the versions that are tested here")
  void example() throws IOException {
    Pom example = Pom.of(ROOT.resolve("bench-tests/example"));
    assertFalse(example.has("/project/parent"));
    assertTrue(
        parent.withModules().stream().noneMatch(pom -> pom.artifact().equals(example.artifact())));
    assertEquals(version, example.text("/project/properties/tankwright.version"));
    for (String of : List.of("junit", "compiler-plugin", "resources-plugin", "surefire-plugin")) {
      String property = "/project/properties/" + of + ".version";
      assertEquals(parent.text(property), example.text(property), of);
    }
  }

  @Test
  @DisplayName("the page about tests in Java names the version of the bill of materials")
  void page() throws IOException {
    String page = Files.readString(ROOT.resolve("docs/java-api.md"));
    assertTrue(
        page.contains("<artifactId>" + BOM + "</artifactId>\n      <version>" + version + "<"));
  }
}
