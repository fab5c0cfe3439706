package dev.tankwright.bench.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.EventType;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A schema that was published stays as it was: whoever wrote a reader against it relies on it. */
class PublishedVersionsTest {
  private static final String NAME = "dev.tankwright.cycle.completed.v1.json";

  @TempDir private Path copy;

  @BeforeEach
  void copySchemas() throws IOException {
    try (Stream<Path> files = Files.list(Contract.schemaFolder())) {
      for (Path file : files.toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
    }
  }

  @Test
  @DisplayName("no published schema has changed, and every schema is published")
  void published() throws IOException {
    assertEquals(List.of(), PublishedSchemas.wrong(Contract.schemaFolder()));
  }

  @Test
  @DisplayName("a change of a published schema is found, and a new version asked for")
  void changed() throws IOException {
    Path file = copy.resolve(NAME);
    Files.writeString(file, Files.readString(file) + " ", StandardCharsets.UTF_8);
    assertEquals(
        List.of(
            NAME
                + " was published and has changed; put it back as it was, and make the change in"
                + " dev.tankwright.cycle.completed.v2.json, with a new type beside the old one"),
        PublishedSchemas.wrong(copy));
  }

  @Test
  @DisplayName("a published schema that is gone is found")
  void gone() throws IOException {
    Files.delete(copy.resolve(NAME));
    assertEquals(
        List.of(NAME + " was published and is gone; put it back as it was"),
        PublishedSchemas.wrong(copy));
  }

  @Test
  @DisplayName("a schema that is not in the list is found, with the line that it needs there")
  void unlisted() throws IOException {
    Files.writeString(copy.resolve("new.v1.json"), "{}", StandardCharsets.UTF_8);
    // SHA-256 of the two braces, by sha256sum of the GNU coreutils.
    assertEquals(
        List.of(
            "new.v1.json is not in published.sha256; once its content is settled, add the line"
                + " 44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a  new.v1.json"),
        PublishedSchemas.wrong(copy));
  }

  @Test
  @DisplayName("the types of this build include every type that has a published schema")
  void typesStay() throws IOException {
    List<String> now =
        Stream.of(EventType.values()).map(EventType::schemaName).collect(Collectors.toList());
    now.addAll(List.of(Contract.EVENT, Contract.STATUS));
    for (String file : PublishedSchemas.listed(Contract.schemaFolder()).keySet()) {
      String name = file.substring(0, file.length() - ".json".length());
      assertTrue(now.contains(name), name + " was published, and nothing makes it any more");
    }
  }
}
