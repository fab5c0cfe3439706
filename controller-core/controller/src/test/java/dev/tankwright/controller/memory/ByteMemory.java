package dev.tankwright.controller.memory;

import java.util.Arrays;

/** A memory of which the power can be cut during any write. */
final class ByteMemory implements NonVolatile {
  /** The power is gone; nothing of the scan goes on. */
  static final class PowerCut extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  /** What a cut leaves of the octet that is being written. */
  enum InFlight {
    OLD,
    NEW,
    GARBAGE
  }

  private static final int NEVER = -1;
  private static final int ALL = -2;

  private final byte[] octets;
  private int writesLeft = NEVER;
  private int disturbedIn = NEVER;
  private int stuck = NEVER;
  private InFlight inFlight = InFlight.OLD;
  private int garbage;
  private int writes;

  ByteMemory(int size) {
    octets = new byte[size];
    Arrays.fill(octets, (byte) ERASED);
  }

  /** The power is cut during the write after so many more writes. */
  void cutAfter(int wholeWrites, InFlight left, int garbageOctet) {
    writesLeft = wholeWrites;
    inFlight = left;
    garbage = garbageOctet;
  }

  /** The power is there again. */
  void powerUp() {
    writesLeft = NEVER;
  }

  @Override
  public int size() {
    return octets.length;
  }

  @Override
  public int read(int address) {
    return octets[address] & 0xFF;
  }

  @Override
  public void write(int address, int octet) {
    if (octet < 0 || octet > 0xFF) {
      throw new IllegalArgumentException("an octet is 0 to 255, not " + octet);
    }
    writes++;
    if (writesLeft == 0) {
      octets[address] = (byte) left(octets[address], octet);
      throw new PowerCut();
    }
    writesLeft -= writesLeft == NEVER ? 0 : 1;
    disturbedIn -= disturbedIn == NEVER ? 0 : 1;
    if (stuck != ALL && address != stuck) {
      octets[address] = (byte) (disturbedIn == 0 ? ~octet : octet);
    }
    disturbedIn = disturbedIn == 0 ? NEVER : disturbedIn;
  }

  /** An octet takes nothing any more. */
  void stick(int address) {
    stuck = address;
  }

  /** No octet takes anything any more. */
  void stickAll() {
    stuck = ALL;
  }

  /** Every octet takes what is written. */
  void unstick() {
    stuck = NEVER;
  }

  /** One write from now on, the given one, stores the opposite of every bit. */
  void disturb(int write) {
    disturbedIn = write;
  }

  private int left(int old, int octet) {
    return switch (inFlight) {
      case OLD -> old;
      case NEW -> octet;
      case GARBAGE -> garbage;
    };
  }

  /** How many writes there were, the one cut off included. */
  int writes() {
    return writes;
  }

  /** Turns one bit over, the least significant bit of every octet first. */
  void flip(int bit) {
    octets[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
  }

  /** Puts the same value into every octet of a stretch. */
  void fill(int from, int to, int octet) {
    Arrays.fill(octets, from, to, (byte) octet);
  }

  byte[] image() {
    return octets.clone();
  }

  void restore(byte[] image) {
    System.arraycopy(image, 0, octets, 0, octets.length);
  }
}
