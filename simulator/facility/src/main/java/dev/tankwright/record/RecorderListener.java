package dev.tankwright.record;

/** Hears how a recorder fares; called on the recorder's thread, and must not keep it long. */
public interface RecorderListener {
  /** The subscription stands. */
  void listening();

  /** A batch is committed. */
  void committed(BatchResult noted);

  /**
   * Something keeps the recorder from its work; it goes on trying.
   *
   * @param words what is wrong, where, and what would be right; said once until it is over
   */
  void trouble(String words);

  /** What was said last is over. */
  void recovered();
}
