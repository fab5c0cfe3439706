package dev.tankwright.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.memory.NonVolatile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.profile.BuiltInBaths;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What is wrong with the board's memory shows octet by octet. */
class BoardMemoryTest {
  private static final int SIZE = 40;

  private final Plant plant = new Plant(BuiltInBaths.usual(), new BathStart(4.5, 40, 21, 1), 1);
  private final BoardMemory memory = new BoardMemory(SIZE, plant);

  private void save(int octet) {
    memory.beginSave();
    for (int address = 0; address < SIZE; address++) {
      memory.write(address, octet);
    }
  }

  private int octetsOf(int value) {
    int count = 0;
    for (int address = 0; address < SIZE; address++) {
      count += memory.read(address) == value ? 1 : 0;
    }
    return count;
  }

  @Test
  @DisplayName("a new memory is erased, and whole it keeps what is written")
  void keeps() {
    assertEquals(SIZE, octetsOf(NonVolatile.ERASED));
    for (int octet = 0; octet <= 0xFF; octet++) {
      save(octet);
      assertEquals(SIZE, octetsOf(octet));
    }
  }

  @Test
  @DisplayName("a save cut short leaves the first octets new and the rest as it was, every time")
  void cutShort() {
    save(1);
    plant.breakPart(PartFault.MEMORY_CUT_SHORT, 7);
    save(2);
    assertEquals(7, octetsOf(2));
    assertEquals(SIZE - 7, octetsOf(1));
    save(3);
    assertEquals(7, octetsOf(3));
    assertEquals(SIZE - 7, octetsOf(1));
    plant.repairPart(PartFault.MEMORY_CUT_SHORT);
    save(4);
    assertEquals(SIZE, octetsOf(4));
  }

  @Test
  @DisplayName(
      "damage turns as many bits of one octet in each half as its size says, until repaired")
  void damaged() {
    save(0);
    for (int bits = 1; bits <= 8; bits++) {
      plant.breakPart(PartFault.MEMORY_DAMAGED, bits);
      assertEquals(SIZE - 2, octetsOf(0));
      assertEquals(2, octetsOf((1 << bits) - 1));
      assertEquals(memory.read(SIZE / 4), memory.read(3 * SIZE / 4));
    }
    plant.repairPart(PartFault.MEMORY_DAMAGED);
    assertEquals(SIZE, octetsOf(0));
  }
}
