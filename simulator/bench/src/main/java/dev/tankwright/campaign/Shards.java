package dev.tankwright.campaign;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Joins the shares of one campaign. */
public final class Shards {
  private Shards() {}

  /**
   * Joins the results of folders, in whatever order they are named.
   *
   * @return the result of the whole campaign, the same as of one machine alone
   * @throws ResultFileException when a share is missing, there twice, incomplete, damaged, or of
   *     another campaign, version or division
   */
  public static CampaignResult join(List<Path> folders) throws ResultFileException {
    Map<Integer, Path> places = new LinkedHashMap<>();
    List<CaseResult> cases = new ArrayList<>();
    About about = null;
    for (Path folder : folders) {
      ResultFile file =
          ResultFile.read(folder)
              .orElseThrow(
                  () ->
                      new ResultFileException(
                          folder
                              + " holds no "
                              + ResultFile.NAME
                              + "; name the folders that 'tankwright campaign --shard' wrote"));
      about = about == null ? file.about() : about;
      checkSame(folders.get(0), about, folder, file.about());
      Path twin = places.putIfAbsent(file.about().shard().index(), folder);
      if (twin != null) {
        throw new ResultFileException(
            folder
                + " holds shard "
                + file.about().shard()
                + ", and so does "
                + twin
                + "; name one of them");
      }
      checkWhole(folder, file);
      cases.addAll(file.cases());
    }
    if (about == null) {
      throw new ResultFileException("no folder was named; name one for each shard");
    }
    checkAll(about, places);
    return CampaignResult.of(about.with(Shard.WHOLE), cases);
  }

  private static void checkSame(Path first, About one, Path folder, About other)
      throws ResultFileException {
    if (!one.with(Shard.WHOLE).equals(other.with(Shard.WHOLE))
        || one.shard().count() != other.shard().count()) {
      throw new ResultFileException(
          folder + " does not match " + first + ": " + Difference.of(other, one));
    }
  }

  private static void checkWhole(Path folder, ResultFile file) throws ResultFileException {
    int wanted = file.about().shard().sizeOf(file.about().cases());
    if (!file.discarded().isEmpty()) {
      throw new ResultFileException(
          folder.resolve(ResultFile.NAME)
              + (file.cut() ? " was cut short" : " is damaged")
              + " in line "
              + file.discarded().get(0)
              + "; resume that shard with --resume, which discards the line and runs its case"
              + " again");
    }
    if (file.cases().size() < wanted) {
      throw new ResultFileException(
          folder
              + " holds "
              + file.cases().size()
              + " of the "
              + wanted
              + " cases of shard "
              + file.about().shard()
              + "; resume that shard with --resume");
    }
  }

  private static void checkAll(About about, Map<Integer, Path> places) throws ResultFileException {
    int count = about.shard().count();
    List<String> missing =
        IntStream.rangeClosed(1, count)
            .filter(index -> !places.containsKey(index))
            .mapToObj(index -> index + "/" + count)
            .toList();
    if (!missing.isEmpty()) {
      String some = String.join(", ", missing.subList(0, Math.min(8, missing.size())));
      throw new ResultFileException(
          "of "
              + about.file()
              + " "
              + missing.size()
              + " of "
              + count
              + " shards are missing: "
              + some
              + (missing.size() > 8 ? " and more" : "")
              + "; name their folders too");
    }
  }
}
