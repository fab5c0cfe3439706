package dev.tankwright.campaign;

/** Why results of two origins cannot stand in one file, in words. */
final class Difference {
  private Difference() {}

  /**
   * The first thing that differs.
   *
   * @param found what was found
   * @param wanted what it should be
   */
  static String of(About found, About wanted) {
    if (!found.file().equals(wanted.file())) {
      return "it is of the campaign " + found.file() + ", not of " + wanted.file();
    }
    if (!found.version().equals(wanted.version())) {
      return "it was run by version " + found.version() + ", not by " + wanted.version();
    }
    if (!found.sha256().equals(wanted.sha256())) {
      return "it is of "
          + found.file()
          + " with the checksum "
          + found.sha256().substring(0, 12)
          + "…, not "
          + wanted.sha256().substring(0, 12)
          + "…: the campaign, a scenario or a bath has changed since";
    }
    if (!found.shard().equals(wanted.shard())) {
      return "it is shard " + found.shard() + ", not " + wanted.shard();
    }
    return "its header differs";
  }
}
