package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LinksTest {
  private static final Pattern LINK =
      Pattern.compile("(?:\\]\\(|src=\"|srcset=\")([^)\"#:]+)(?:#[^)\"]*)?[)\"]");
  private static final Pattern SCENARIO = Pattern.compile("bench-tests/scenarios/[\\w./-]+\\.yaml");

  @Test
  @DisplayName("every relative link and every scenario named in a page leads to a file")
  void links() throws IOException {
    List<String> dead = new ArrayList<>();
    List<Path> pages = pages();
    for (Path page : pages) {
      String text = Files.readString(page);
      Matcher link = LINK.matcher(text);
      while (link.find()) {
        note(page, page.resolveSibling(link.group(1)), dead);
      }
      Matcher scenario = SCENARIO.matcher(text);
      while (scenario.find()) {
        note(page, Page.root().resolve(scenario.group()), dead);
      }
    }
    assertTrue(pages.size() > 5, "too few pages found: " + pages);
    assertEquals(List.of(), dead);
  }

  @Test
  @DisplayName("the index of the documentation names every page below it")
  void index() throws IOException {
    Path folder = Page.root().resolve("docs");
    Set<Path> unnamed = new TreeSet<>();
    try (Stream<Path> tree = Files.walk(folder)) {
      tree.filter(path -> path.toString().endsWith(".md")).forEach(unnamed::add);
    }
    Path index = folder.resolve("README.md");
    assertTrue(unnamed.remove(index), "no index in " + folder);
    Matcher link = LINK.matcher(Files.readString(index));
    while (link.find()) {
      unnamed.remove(index.resolveSibling(link.group(1)).normalize());
    }
    assertEquals(Set.of(), unnamed, "docs/README.md names every page and says who reads it");
  }

  private static void note(Path page, Path target, List<String> dead) {
    if (!Files.exists(target)) {
      dead.add(page.getFileName() + ": " + target.normalize());
    }
  }

  private static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>();
    pages.add(Page.root().resolve("README.md"));
    pages.add(Page.root().resolve("DEVELOPERS.md"));
    try (Stream<Path> tree = Files.walk(Page.root().resolve("docs"))) {
      tree.filter(path -> path.toString().endsWith(".md")).forEach(pages::add);
    }
    return pages;
  }
}
