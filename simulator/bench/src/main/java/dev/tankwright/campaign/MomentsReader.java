package dev.tankwright.campaign;

import dev.tankwright.scenario.file.FileBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Reads when a campaign injects its faults. */
final class MomentsReader {
  private static final String KEY = "moments";
  private static final int MOST = 10_000;
  private static final String LONGEST_SECONDS = "86400";
  private static final double MILLI = 1000;

  private final FileBlock campaign;

  MomentsReader(FileBlock campaign) {
    this.campaign = campaign;
  }

  /** The moments; the entry into the phase where none are given. */
  Moments read() {
    FileBlock block = campaign.block(KEY, List.of("at", "sample")).orElse(null);
    if (block == null) {
      return Moments.ENTRY;
    }
    if (block.has("at") == block.has("sample")) {
      campaign.report(
          KEY,
          "'moments' needs one of the two: 'at: [0 s, 50 %]' or 'sample: 4', not both or none");
      return Moments.ENTRY;
    }
    if (block.has("sample")) {
      return new Moments(List.of(), (int) block.whole("sample", 1, MOST).orElse(1));
    }
    List<Moments.Moment> grid = new ArrayList<>();
    for (String text : block.texts("at")) {
      boolean share = text.endsWith("%");
      OptionalDouble value =
          share
              ? block.quantityOf(text, "at", FileBlock.Kind.SHARE, "0", "1")
              : block.quantityOf(text, "at", FileBlock.Kind.TIME, "0", LONGEST_SECONDS);
      value.ifPresent(v -> grid.add(new Moments.Moment(share ? v : v * MILLI, share)));
    }
    return new Moments(grid, 0);
  }
}
