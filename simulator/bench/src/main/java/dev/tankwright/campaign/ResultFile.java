package dev.tankwright.campaign;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A result file as it was found, whole or not. Immutable.
 *
 * @param about what its head says
 * @param cases the cases whose lines fit their checksums, in the order of the file
 * @param discarded numbers of the lines that do not, from 1
 * @param cut true when its last line was not written to its end
 * @param doubled how many lines say again what a line before them says
 */
public record ResultFile(
    About about, List<CaseResult> cases, List<Integer> discarded, boolean cut, int doubled) {
  /** Its name in the folder of a campaign. */
  public static final String NAME = "results.tsv";

  /** Keeps its own copies. */
  public ResultFile {
    cases = List.copyOf(cases);
    discarded = List.copyOf(discarded);
  }

  /**
   * Reads the file of a folder.
   *
   * @return empty when the folder has none
   * @throws ResultFileException when it is no result file, its head is damaged, or it contradicts
   *     itself
   */
  public static Optional<ResultFile> read(Path folder) throws ResultFileException {
    Path file = folder.resolve(NAME);
    try {
      return Optional.of(read(file, Files.readAllBytes(file)));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new ResultFileException(file + " cannot be read (" + e + "); check its permissions");
    }
  }

  private static ResultFile read(Path file, byte[] bytes) throws ResultFileException {
    String text = new String(bytes, StandardCharsets.UTF_8);
    boolean cut = !text.endsWith("\n");
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    lines.remove(lines.size() - 1);
    List<List<String>> head = new ArrayList<>();
    int at = 0;
    while (at < lines.size() && !isEnd(head)) {
      head.add(ResultLine.fields(lines.get(at++)).orElseThrow(() -> damaged(file)));
    }
    if (!isEnd(head)) {
      throw damaged(file);
    }
    About about = about(file, head);
    List<Integer> discarded = new ArrayList<>();
    Map<Integer, CaseResult> cases = new LinkedHashMap<>();
    int doubled = 0;
    for (; at < lines.size(); at++) {
      Optional<List<String>> fields = ResultLine.fields(lines.get(at));
      if (fields.isEmpty()) {
        discarded.add(at + 1);
      } else {
        doubled += take(file, at + 1, fields.get(), about, cases);
      }
    }
    if (cut) {
      discarded.add(lines.size() + 1);
    }
    return new ResultFile(about, List.copyOf(cases.values()), discarded, cut, doubled);
  }

  private static boolean isEnd(List<List<String>> head) {
    return !head.isEmpty() && head.get(head.size() - 1).get(0).equals(HeadLines.END);
  }

  private static ResultFileException damaged(Path file) {
    return new ResultFileException(
        file
            + " is not a campaign's result file, or its header is damaged; nothing in it can be"
            + " used, so remove it and run that shard again");
  }

  private static About about(Path file, List<List<String>> head) throws ResultFileException {
    List<String> first = head.get(0);
    if (first.size() != 2 || !first.get(0).equals(HeadLines.MAGIC)) {
      throw damaged(file);
    }
    if (!first.get(1).equals(HeadLines.FORMAT)) {
      throw new ResultFileException(
          file
              + " is written in format "
              + first.get(1)
              + "; this version reads format "
              + HeadLines.FORMAT
              + ", so use the version that wrote it");
    }
    try {
      return HeadLines.read(head.subList(1, head.size() - 1));
    } catch (IllegalArgumentException e) {
      throw damaged(file);
    }
  }

  /** Takes a case; tells how many times it had been there before. */
  private static int take(
      Path file, int line, List<String> fields, About about, Map<Integer, CaseResult> cases)
      throws ResultFileException {
    try {
      CaseResult result = CaseLine.of(fields, about);
      if (!about.shard().has(result.number()) || result.number() >= about.cases()) {
        throw new ResultFileException(
            file
                + " holds case "
                + result.number()
                + " in line "
                + line
                + ", which does not belong to its shard "
                + about.shard()
                + "; remove the file and run that shard again");
      }
      CaseResult before = cases.putIfAbsent(result.number(), result);
      if (before != null && !before.equals(result)) {
        throw new ResultFileException(
            file
                + " holds two results of case "
                + result.number()
                + " that differ, the second in line "
                + line
                + "; remove the file and run that shard again");
      }
      return before == null ? 0 : 1;
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      throw new ResultFileException(
          file
              + " holds a line "
              + line
              + " that matches its checksum but is not a case ("
              + e.getMessage()
              + "); remove the file and run that shard again");
    }
  }

  /** What it holds, summed up. */
  public CampaignResult result() {
    return CampaignResult.of(about, cases);
  }
}
