package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertArrayEquals;
import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class StateWordsTest {
  private final StateWords state = new StateWords(3);

  @Test
  @DisplayName("what was captured is given back in order, whatever stands there meanwhile")
  void givesBack() {
    state.beginCapture();
    assertEquals(-7, state.carry(-7));
    assertTrue(state.carry(true));
    assertFalse(state.carry(false));
    assertEquals(3, state.size());
    assertEquals(-7, state.word(0));
    assertEquals(1, state.word(1));
    assertEquals(0, state.word(2));
    assertArrayEquals(new int[] {-7, 1, 0}, state.words());

    state.beginRestore();
    assertEquals(0, state.size());
    assertEquals(-7, state.carry(5));
    assertTrue(state.carry(false));
    assertFalse(state.carry(true));
    assertEquals(3, state.size());
  }

  @Test
  @DisplayName("a state larger than its room is an error and not cut off")
  void noRoom() {
    state.beginCapture();
    state.carry(1);
    state.carry(2);
    state.carry(3);
    assertThrows(IndexOutOfBoundsException.class, () -> state.carry(4));
  }
}
