package dev.tankwright.fleet;

/** How far a device of a fleet has come. */
enum DeviceState {
  /** It is to be switched on later. */
  TO_COME,
  /** Its day is on. */
  ONLINE,
  /** Its day is over; it still sends pending events. */
  ENDED,
  /** It has said goodbye. */
  OFFLINE
}
