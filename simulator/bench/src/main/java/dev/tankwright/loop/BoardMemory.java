package dev.tankwright.loop;

import dev.tankwright.controller.memory.NonVolatile;
import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import java.util.Arrays;

/**
 * The board's non-volatile memory, erased at first, and what can be wrong with it: a save that is
 * cut short, as the loss of supply cuts it, and an octet in each half that reads wrong. What is in
 * it outlasts the controller.
 */
final class BoardMemory implements NonVolatile {
  private final byte[] octets;
  private final Plant plant;
  private int written;

  BoardMemory(int size, Plant plant) {
    octets = new byte[size];
    Arrays.fill(octets, (byte) ERASED);
    this.plant = plant;
  }

  /** What is written from now on is another save. */
  void beginSave() {
    written = 0;
  }

  @Override
  public int size() {
    return octets.length;
  }

  @Override
  public int read(int address) {
    int octet = octets[address] & 0xFF;
    return isWeak(address) ? octet ^ wrongBits() : octet;
  }

  private boolean isWeak(int address) {
    int half = octets.length / 2;
    return address % half == half / 2;
  }

  private int wrongBits() {
    return (1 << (int) plant.faultSize(PartFault.MEMORY_DAMAGED)) - 1;
  }

  @Override
  public void write(int address, int octet) {
    boolean cut = plant.isBroken(PartFault.MEMORY_CUT_SHORT);
    if (!cut || written < plant.faultSize(PartFault.MEMORY_CUT_SHORT)) {
      octets[address] = (byte) octet;
    }
    written++;
  }
}
