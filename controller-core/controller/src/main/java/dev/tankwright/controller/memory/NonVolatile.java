package dev.tankwright.controller.memory;

/**
 * The board's non-volatile memory, octet by octet. Erased octets read {@link #ERASED}.
 *
 * <p>An octet is stored when {@link #write} returns, and octets are stored in the order in which
 * they are written. A power cut during a write may leave that one octet as it was, as it was to be,
 * or with any other value; it touches no other octet.
 *
 * <p>A record is written within one scan, so the memory has to be one that is written as fast as it
 * is read, such as ferroelectric or battery-backed memory. A memory that waits some milliseconds
 * for each octet would hold up the scan. Not thread-safe.
 */
public interface NonVolatile {
  /** What an octet reads that was never written. */
  int ERASED = 0xFF;

  /** How many octets there are. */
  int size();

  /**
   * Reads an octet.
   *
   * @param address 0 to {@link #size()} less 1
   * @return 0–255
   */
  int read(int address);

  /**
   * Writes an octet.
   *
   * @param address 0 to {@link #size()} less 1
   * @param octet 0–255
   */
  void write(int address, int octet);
}
