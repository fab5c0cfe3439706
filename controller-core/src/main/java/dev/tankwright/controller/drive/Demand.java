package dev.tankwright.controller.drive;

/** What the sequence asks for in this scan, in the words of the process. A struct. */
public final class Demand {
  /** Temperature to hold, m°C; 0 when nothing is to be heated. */
  public int heatToMilliC;

  private Sound sound = Sound.OFF;

  /** Whether the tank is to be emptied. */
  public boolean drain;

  /** Asks for nothing. */
  public void clear() {
    heatToMilliC = 0;
    sound(Sound.OFF);
    drain = false;
  }

  /** How to drive the ultrasound. */
  public Sound sound() {
    return sound;
  }

  /**
   * Says how to drive the ultrasound. Stored only when it is another way: a scan repeats itself.
   */
  public void sound(Sound asked) {
    if (sound != asked) {
      sound = asked;
    }
  }
}
