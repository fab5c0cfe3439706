package dev.tankwright.report.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.checksum.Sha256;
import dev.tankwright.report.SampleRun;
import dev.tankwright.report.run.RunFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of checksums: made, checked, and refused when it is none. */
class ManifestCheckTest {
  /** SHA-256 of the three bytes abc: FIPS 180-2, appendix B.1. */
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @TempDir private Path temp;

  @BeforeEach
  void writeRun() {
    new RunFolder(temp).write(SampleRun.of(), SampleRun.events(), List.of());
  }

  @Test
  void listsEveryFileOfARunWithItsChecksum() throws Exception {
    List<String> lines = Files.readAllLines(temp.resolve("SHA256SUMS"));
    assertEquals(8, lines.size());
    for (String line : lines) {
      assertEquals(Sha256.of(temp.resolve(line.substring(66))), line.substring(0, 64));
    }
    assertTrue(ManifestCheck.of(temp).isIntact());
    assertEquals("8 files listed, 8 unaltered.\n", ManifestCheck.of(temp).text());
  }

  @Test
  void computesChecksumsAsTheStandardDoes() throws IOException {
    assertEquals(ABC, Sha256.of(Files.writeString(temp.resolve("abc"), "abc")));
  }

  @Test
  void findsWhatIsAlteredMissingAndUnlisted() throws Exception {
    Files.writeString(temp.resolve("trace.csv"), "x");
    Files.delete(temp.resolve("record.json"));
    Files.writeString(temp.resolve("notes.txt"), "x");
    ManifestCheck found = ManifestCheck.of(temp);
    assertFalse(found.isIntact());
    assertEquals(6, found.same());
    assertTrue(found.altered().get(0).startsWith("trace.csv: listed "));
    assertEquals(List.of("record.json"), found.missing());
    assertEquals(List.of("notes.txt"), found.unlisted());
    assertTrue(found.text().contains("ALTERED   trace.csv"), found.text());
    assertTrue(found.text().contains("MISSING   record.json"), found.text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "not a checksum\n",
        ABC + "  a\n" + ABC + "  a\n",
        ABC + "  ../out\n",
        ABC + "  /etc/hostname\n",
        "ba7816bf8f01cfea414140de  cut\n"
      })
  void refusesAListThatIsNone(String list) throws IOException {
    Files.writeString(temp.resolve("SHA256SUMS"), list);
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> ManifestCheck.of(temp));
    assertTrue(refused.getMessage().contains("SHA256SUMS"), refused::getMessage);
  }

  @Test
  void saysThatThereIsNoList() throws IOException {
    Files.delete(temp.resolve("SHA256SUMS"));
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> ManifestCheck.of(temp));
    assertTrue(refused.getMessage().contains("this list does not exist"), refused::getMessage);
  }

  /** The form of the GNU core utilities for such names, from memory. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void keepsNamesWithBackslashesAndLineBreaksApart() throws Exception {
    Files.writeString(temp.resolve("a\\n\nb"), "abc");
    byte[] document = Manifest.of(temp, List.of("a\\n\nb")).document();
    assertEquals("\\" + ABC + "  a\\\\n\\nb\n", new String(document, StandardCharsets.UTF_8));
    Files.write(temp.resolve("SHA256SUMS"), document);
    assertEquals(1, ManifestCheck.of(temp).same());
  }
}
