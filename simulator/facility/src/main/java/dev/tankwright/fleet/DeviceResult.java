package dev.tankwright.fleet;

/**
 * What became of one device's day.
 *
 * @param device its id
 * @param firstSequence number of the first event of this day
 * @param composed how many events the day had
 * @param committed how many of them the outbox holds
 * @param acknowledged how many events the broker has acknowledged, those of earlier days that were
 *     owed included
 * @param waiting how many events of all days it has not acknowledged
 * @param lastError the last thing that went wrong, in plain words, or null; present also when a
 *     later attempt succeeded
 */
public record DeviceResult(
    String device,
    long firstSequence,
    long composed,
    long committed,
    long acknowledged,
    long waiting,
    String lastError) {
  /** Events that were composed and are not committed. */
  public long missing() {
    return composed - committed;
  }

  /** True when every event is kept, and acknowledged. */
  public boolean isWhole() {
    return missing() == 0 && waiting == 0;
  }
}
