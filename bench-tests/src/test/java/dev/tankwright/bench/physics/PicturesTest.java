package dev.tankwright.bench.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/**
 * Draws the pictures of docs/physics.md and holds the committed files against them. With {@code
 * -Dtankwright.pictures=write} the files are written anew first.
 */
class PicturesTest {
  private static final String WRITE = "write";

  private static final Map<String, Supplier<String>> PICTURES =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("density", PropertyPictures::density),
              Map.entry("specific-heat", PropertyPictures::specificHeat),
              Map.entry("viscosity", PropertyPictures::viscosity),
              Map.entry("vapour-pressure", PropertyPictures::vapourPressure),
              Map.entry("oxygen", PropertyPictures::oxygen),
              Map.entry("activity", PropertyPictures::activity),
              Map.entry("heating", BathPictures::heating),
              Map.entry("cooling", BathPictures::cooling),
              Map.entry("drain", BathPictures::drain),
              Map.entry("gas", BathPictures::gas),
              Map.entry("day", BathPictures::day),
              Map.entry("dry-run", BathPictures::dryRun)));

  private final Path docs = root().resolve("docs");

  @Test
  void shouldKeepEveryPictureCurrentAndShown() throws IOException {
    String page = Files.readString(docs.resolve("physics.md"));
    for (Map.Entry<String, Supplier<String>> picture : PICTURES.entrySet()) {
      String name = "images/physics/" + picture.getKey() + ".svg";
      Path file = docs.resolve(name);
      String drawn = picture.getValue().get();
      if (WRITE.equals(System.getProperty("tankwright.pictures"))) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, drawn);
      }
      assertTrue(page.contains("](" + name + ")"), name + " is shown in physics.md");
      assertEquals(drawn, Files.readString(file), name + " is current");
    }
  }

  /** The directory that holds docs, from wherever the tests run. */
  private static Path root() {
    Path here = Path.of("").toAbsolutePath();
    while (here != null && !Files.isDirectory(here.resolve("docs"))) {
      here = here.getParent();
    }
    if (here == null) {
      throw new UncheckedIOException(new IOException("no docs directory above the tests"));
    }
    return here;
  }
}
