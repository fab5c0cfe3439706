package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;

/**
 * The lid's making and breaking contact. A bridge over both wins over everything, a broken wire
 * over welded contacts, both over bouncing.
 */
final class LidContacts {
  private final Contact make;
  private final Contact breaking;
  private final Noise faultNoise;

  /**
   * Makes the contacts of a closed lid.
   *
   * @param noise chance of the contacts' chatter
   * @param faultNoise chance of what is broken; apart, so that a repaired fault leaves no trace
   */
  LidContacts(Noise noise, Noise faultNoise) {
    make = new Contact(true, noise);
    breaking = new Contact(false, noise);
    this.faultNoise = faultNoise;
  }

  /** Shows both contacts; called once per scan. */
  void read(Inputs inputs, boolean lidOpen, BrokenParts broken) {
    inputs.lidMakeContact(make.read(!lidOpen));
    inputs.lidBreakContact(breaking.read(lidOpen));
    if (!broken.none()) {
      spoil(inputs, broken);
    }
  }

  private void spoil(Inputs inputs, BrokenParts broken) {
    boolean bypassed = broken.has(PartFault.LID_CONTACTS_BYPASSED);
    boolean made = inputs.lidMakeContact() ^ bounces(broken);
    made |= broken.has(PartFault.LID_MAKE_CONTACT_WELDED);
    made &= !broken.has(PartFault.LID_MAKE_CONTACT_BROKEN);
    inputs.lidMakeContact(made || bypassed);
    boolean broke = inputs.lidBreakContact() ^ bounces(broken);
    broke |= broken.has(PartFault.LID_BREAK_CONTACT_WELDED);
    broke &= !broken.has(PartFault.LID_BREAK_CONTACT_BROKEN);
    inputs.lidBreakContact(broke && !bypassed);
  }

  private boolean bounces(BrokenParts broken) {
    return broken.has(PartFault.LID_CONTACTS_BOUNCING)
        && faultNoise.centred() + 0.5 < broken.size(PartFault.LID_CONTACTS_BOUNCING);
  }
}
