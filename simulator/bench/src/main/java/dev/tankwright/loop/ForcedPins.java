package dev.tankwright.loop;

import dev.tankwright.controller.board.Inputs;

/** The values that are forced on pins at present. One thread. */
final class ForcedPins {
  private final PinForce[] forced = new PinForce[Pin.values().length];
  private boolean any;

  void force(PinForce value) {
    forced[value.pin().ordinal()] = value;
    any = true;
  }

  void release(Pin pin) {
    forced[pin.ordinal()] = null;
  }

  void apply(Inputs in) {
    if (!any) {
      return;
    }
    for (PinForce value : forced) {
      if (value != null) {
        value.apply(in);
      }
    }
  }
}
