package dev.tankwright.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("a part is read as it was written, whatever stands in a display name")
  void writtenIsRead() throws IOException {
    List<Traced> tests =
        List.of(
            test("a comma, a \"quote\", a\nline and an accent é", Verdict.PASSED),
            test("", Verdict.FAILED),
            test("\"", Verdict.ABORTED),
            test("long", Verdict.LEFT_OUT),
            test("plain", Verdict.SKIPPED));
    Part part = new Part("2026-03-02T08:00:00Z", "-Dtest=A,B", tests);
    Path file = folder.resolve("deep").resolve("part.csv");

    part.write(file);

    assertEquals(part, Part.read(file));
  }

  @Test
  @DisplayName("a file that is no part is refused by name")
  void otherFilesAreRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("other.csv"), "a,b\r\n1,2\r\n");

    IOException refused = assertThrows(IOException.class, () -> Part.read(file));

    assertTrue(refused.getMessage().contains("other.csv is no part"), refused.getMessage());
  }

  @Test
  @DisplayName("empty cells stand, first and last")
  void emptyCells() {
    assertEquals(",x,\r\n", Csv.row("", "x", ""));
    assertEquals(List.of(List.of("", "x", ""), List.of("y")), Csv.parse(",x,\r\ny\r\n"));
  }

  private static Traced test(String name, Verdict verdict) {
    return new Traced(List.of("SR-01", "SR-02"), "a.B", "c", name, 2, 3, 1, verdict);
  }
}
