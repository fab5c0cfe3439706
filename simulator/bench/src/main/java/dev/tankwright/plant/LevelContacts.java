package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;

/** The two level contacts. One that is stuck dry is dry even if it is stuck wet as well. */
final class LevelContacts {
  private final BathProfile.Levels levels;

  LevelContacts(BathProfile.Levels levels) {
    this.levels = levels;
  }

  void read(Inputs inputs, double litres, BrokenParts broken) {
    if (broken.none()) {
      inputs.minimumLevelWet(litres >= levels.minimumLitres());
      inputs.fillMarkWet(litres >= levels.fillMarkLitres());
      return;
    }
    double seen = litres + broken.size(PartFault.LEVEL_FOAMED);
    inputs.minimumLevelWet(
        (seen >= levels.minimumLitres() || broken.has(PartFault.MINIMUM_LEVEL_STUCK_WET))
            && !broken.has(PartFault.MINIMUM_LEVEL_STUCK_DRY));
    inputs.fillMarkWet(
        (seen >= levels.fillMarkLitres() || broken.has(PartFault.FILL_MARK_STUCK_WET))
            && !broken.has(PartFault.FILL_MARK_STUCK_DRY));
  }
}
