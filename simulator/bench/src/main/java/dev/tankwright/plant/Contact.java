package dev.tankwright.plant;

/**
 * A mechanical contact. It shows a change at once and then chatters for less than one scan: in the
 * scan after a change it may read either way.
 */
final class Contact {
  private final Noise noise;
  private boolean made;
  private boolean chattering;

  Contact(boolean made, Noise noise) {
    this.made = made;
    this.noise = noise;
  }

  /** Reads the contact, which is now mechanically made or not. Called once per scan. */
  boolean read(boolean nowMade) {
    if (nowMade != made) {
      made = nowMade;
      chattering = true;
      return made;
    }
    if (chattering) {
      chattering = false;
      return noise.coin();
    }
    return made;
  }
}
