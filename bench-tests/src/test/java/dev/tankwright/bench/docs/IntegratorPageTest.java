package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.bench.cli.Tool;
import dev.tankwright.record.EventStore;
import dev.tankwright.record.FindingKind;
import dev.tankwright.record.SqliteDatabase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IntegratorPageTest {
  private static final String TOOL = "java -jar simulator/target/tankwright.jar ";

  @TempDir private Path folder;

  private final Page page = Page.read("docs/integrator.md");

  @Test
  @DisplayName("the worked example of the chain gives what the page says, by the shell's own tools")
  void workedExample() throws Exception {
    Page section = page.section("Verify a chain");
    Process shell =
        new ProcessBuilder("bash", "-c", section.fences("sh").get(0))
            .directory(Page.root().toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, shell.waitFor(), said);
    assertEquals(section.fences("text").get(0), said);
  }

  @Test
  @DisplayName("every command on the page is one that the command line understands")
  void commands() throws Exception {
    List<String> lines =
        page.fences("sh").stream()
            .flatMap(String::lines)
            .filter(line -> line.startsWith(TOOL))
            .toList();
    assertEquals(8, lines.size(), "the page has its commands");
    for (String line : lines) {
      assertTrue(line.matches("[\\w./: -]+"), line + " needs no shell to be split into words");
      // With --help behind it a command is read as a whole, and then only explains itself.
      String[] words = (line.substring(TOOL.length()) + " --help").split(" ", -1);
      Tool.Result tool = Tool.run(folder, words);
      String said = tool.out();
      assertEquals(0, tool.code(), line + ": " + tool.err());
      assertTrue(said.startsWith("Usage: tankwright "), said);
      for (String word : line.substring(TOOL.length()).split(" ", -1)) {
        assertTrue(!word.startsWith("--") || said.contains(word), line + ": " + word);
      }
    }
  }

  @Test
  @DisplayName("every finding is explained, in order")
  void findings() {
    List<String> named =
        page.section("What the recorder does").rows().stream()
            .map(row -> Page.plain(row.get(0)))
            .toList();
    assertEquals(Arrays.stream(FindingKind.values()).map(Enum::name).toList(), named);
  }

  @Test
  @DisplayName("every table stands there with all its columns, in order")
  void tables() throws Exception {
    Map<String, List<String>> printed = new TreeMap<>();
    for (List<String> row : page.section("The tables").rows()) {
      printed.put(Page.plain(row.get(0)), List.of(Page.plain(row.get(1)).split(", ", -1)));
    }
    assertEquals(new TreeMap<>(columns()), printed);
  }

  private Map<String, List<String>> columns() throws IOException, SQLException {
    Path file = folder.resolve("new.db");
    EventStore.open(new SqliteDatabase(file), () -> Instant.EPOCH, new Random(1)).close();
    Map<String, List<String>> columns = new LinkedHashMap<>();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT m.name, c.name FROM sqlite_master m JOIN pragma_table_info(m.name) c"
                    + " WHERE m.type = 'table' ORDER BY m.name, c.cid")) {
      while (row.next()) {
        columns.computeIfAbsent(row.getString(1), name -> new ArrayList<>()).add(row.getString(2));
      }
    }
    return columns;
  }

  @Test
  @DisplayName("the statements that delete what is old fit the tables")
  void deletion() throws Exception {
    columns();
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("new.db"));
        Statement statement = connection.createStatement()) {
      for (String sql : page.fences("sql").get(0).split(";\n", -1)) {
        if (!sql.isBlank()) {
          assertEquals(0, statement.executeUpdate(sql), sql);
        }
      }
    }
  }
}
