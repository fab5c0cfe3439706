package dev.tankwright.campaign;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * One line of a result file: fields between tabs, the last of which is the CRC-32 of all before it
 * with its tab, as eight hexadecimal digits. A line that was cut or changed does not fit its
 * checksum.
 */
final class ResultLine {
  private static final char TAB = '\t';

  private ResultLine() {}

  /** The line with its checksum and its end. */
  static String of(List<String> fields) {
    StringBuilder line = new StringBuilder(200);
    for (String field : fields) {
      line.append(clean(field)).append(TAB);
    }
    return line.append(checksum(line.toString())).append('\n').toString();
  }

  /** The fields of a line without its end; empty when the line does not fit its checksum. */
  static Optional<List<String>> fields(String line) {
    int end = line.lastIndexOf(TAB);
    if (end < 0 || !line.substring(end + 1).equals(checksum(line.substring(0, end + 1)))) {
      return Optional.empty();
    }
    return Optional.of(List.of(line.substring(0, end).split("\t", -1)));
  }

  private static String checksum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format("%08x", crc.getValue());
  }

  /** What would end a field or a line cannot stand in one. */
  private static String clean(String field) {
    return field.replaceAll("\\p{Cntrl}", " ");
  }
}
