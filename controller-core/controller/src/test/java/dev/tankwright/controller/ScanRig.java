package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertNull;
import static dev.tankwright.trace.CountedAssertions.assertTrue;
import static dev.tankwright.trace.CountedAssertions.fail;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.Severity;
import dev.tankwright.controller.board.StateWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A bath without physics around a controller: temperatures are set, contacts follow the outputs,
 * time is advanced scan by scan. Tests read as timelines: set one thing, advance, expect.
 */
public final class ScanRig {
  /** One scan, ms. */
  public static final int SCAN = 10;

  /** Degasses for 20 s and cleans for 30 s at 40 °C: quick, and in everything else as usual. */
  public static final Recipe SHORT = new Recipe(Programme.MEDIUM, 40_000, 20_000, 30_000);

  /** The standard profile, but for jumps: tests set temperatures at once. */
  public static final DeviceProfile PROFILE =
      DeviceProfile.sixLitre().with(Parameter.JUMP_LIMIT, 50_000);

  /** Just above the dead band of {@link #SHORT}: the setpoint is reached and the heater rests. */
  public static final double WARM = 40.4;

  public final DeviceProfile profile;
  public CleanerController controller;
  public final Inputs inputs = new Inputs();
  public final Outputs outputs = new Outputs();
  public final IdealBoard board = new IdealBoard();
  public final List<Noted> notes = new ArrayList<>();

  /** What else is done at the end of every scan, before the board answers. */
  public Consumer<ScanRig> afterScan = rig -> {};

  private long rigMs;

  private ScanRig(DeviceProfile profile) {
    this.profile = profile;
    controller = new CleanerController(profile);
    IdealBoard.rest(inputs);
    warm(25);
  }

  public static ScanRig poweredUp(DeviceProfile profile) {
    return new ScanRig(profile);
  }

  /** In standby, at 25 °C, filled and closed. */
  public static ScanRig selfTested(DeviceProfile profile) {
    ScanRig rig = new ScanRig(profile).advance(1_000);
    return rig.expect(Phase.STANDBY);
  }

  public static ScanRig selfTested() {
    return selfTested(PROFILE);
  }

  /**
   * In the given phase, by the shortest way that an operator could take; warm and with the heater
   * at rest once it has heated.
   */
  public static ScanRig in(Phase phase, DeviceProfile profile) {
    if (phase == Phase.SELF_TEST) {
      return poweredUp(profile).advance(SCAN).expect(phase);
    }
    ScanRig rig = selfTested(profile);
    switch (phase) {
      case STANDBY -> {}
      case DRAINING -> rig.press(Command.DRAIN);
      case LOCKOUT -> rig.tripOnSensor();
      case HEATING -> rig.start(SHORT);
      case DEGASSING -> rig.start(SHORT).warm(WARM).advance(SCAN);
      case CLEANING -> rig.start(SHORT).warm(WARM).until(Phase.CLEANING, 60_000);
      case PAUSED -> rig.start(SHORT).press(Command.PAUSE);
      case COMPLETE -> rig.start(SHORT).warm(WARM).until(Phase.COMPLETE, 90_000);
      default -> fail("no way to " + phase);
    }
    return rig.expect(phase);
  }

  public static ScanRig in(Phase phase) {
    return in(phase, PROFILE);
  }

  /** A sensor fault that is mended at once: lockout, with its cause gone. */
  private void tripOnSensor() {
    controlCounts(4_095).advance(200).warm(25).advance(SCAN);
  }

  // --- what the world does -----------------------------------------------------------------------

  public ScanRig warm(double celsius) {
    return controlSensor(celsius).cutOffSensor(celsius);
  }

  public ScanRig controlSensor(double celsius) {
    return controlCounts(Converter.counts(celsius, profile));
  }

  public ScanRig cutOffSensor(double celsius) {
    return cutOffCounts(Converter.counts(celsius, profile));
  }

  public ScanRig controlCounts(int counts) {
    inputs.controlSensorCounts = counts;
    return this;
  }

  public ScanRig cutOffCounts(int counts) {
    inputs.cutOffSensorCounts = counts;
    return this;
  }

  public ScanRig lid(boolean closed) {
    return lidContacts(closed, !closed);
  }

  public ScanRig lidContacts(boolean make, boolean breaking) {
    inputs.lidMakeContact(make);
    inputs.lidBreakContact(breaking);
    return this;
  }

  public ScanRig level(boolean minimumWet, boolean fillMarkWet) {
    inputs.minimumLevelWet(minimumWet);
    inputs.fillMarkWet(fillMarkWet);
    return this;
  }

  public ScanRig mains(boolean present) {
    inputs.mainsPresent(present);
    return this;
  }

  public ScanRig heaterCurrent(IdealBoard.Feedback feedback) {
    board.heaterCurrent = feedback;
    board.answer(outputs, inputs, 0);
    return this;
  }

  public ScanRig generatorRunning(IdealBoard.Feedback feedback) {
    board.generatorRunning = feedback;
    board.answer(outputs, inputs, 0);
    return this;
  }

  public ScanRig generatorFault(boolean present) {
    inputs.generatorFault(present);
    return this;
  }

  /** Holds the valve's contacts where they are put, whatever is driven. */
  public ScanRig valveJammed(boolean openEnd, boolean closedEnd) {
    board.valveJammed = true;
    inputs.drainOpenEnd(openEnd);
    inputs.drainClosedEnd(closedEnd);
    return this;
  }

  public ScanRig valveFree() {
    board.valveJammed = false;
    board.answer(outputs, inputs, 0);
    return this;
  }

  /** The board loses its supply and has it again after the given time; off in between. */
  public ScanRig cutPower(int seconds) {
    StateWords kept = new StateWords(controller.keptWords());
    kept.beginCapture();
    controller.keep(kept);
    controller = new CleanerController(profile);
    kept.beginRestore();
    controller.recall(kept, seconds);
    board.answer(new Outputs(), inputs, 10_000);
    return this;
  }

  /** A controller that was just made takes on the state of the present one, and goes on from it. */
  public ScanRig handOver() {
    StateWords state = new StateWords(CleanerController.STATE_WORDS);
    controller.capture(state);
    controller = new CleanerController(profile);
    controller.restore(state, inputs);
    return this;
  }

  // --- what the operator does: every key acts in a scan of its own -------------------------------

  public ScanRig press(Command command) {
    inputs.command = command;
    inputs.commandSequence++;
    return scan(SCAN);
  }

  public ScanRig press(Command command, FoilVerdict verdict) {
    inputs.foilVerdict = verdict;
    return press(command);
  }

  public ScanRig press(Command command, Programme programme) {
    inputs.recipe = Recipe.standard(programme);
    return press(command);
  }

  public ScanRig start(Recipe recipe) {
    inputs.recipe = recipe;
    return press(Command.START);
  }

  // --- time --------------------------------------------------------------------------------------

  /** One scan after the given time. */
  public ScanRig scan(int dtMs) {
    inputs.millis += dtMs;
    rigMs += dtMs;
    controller.scan(inputs, outputs);
    controller.notices().drain((kind, a, b, at) -> notes.add(new Noted(kind, a, b, rigMs)));
    afterScan.accept(this);
    board.answer(outputs, inputs, dtMs);
    return this;
  }

  public ScanRig advance(int ms) {
    for (int passed = 0; passed < ms; passed += SCAN) {
      scan(SCAN);
    }
    return this;
  }

  public ScanRig until(Phase phase, int atMostMs) {
    for (int passed = 0; passed < atMostMs && phase() != phase; passed += SCAN) {
      scan(SCAN);
    }
    return expect(phase);
  }

  public long now() {
    return rigMs;
  }

  // --- what is expected --------------------------------------------------------------------------

  public Phase phase() {
    return outputs.panel.phase;
  }

  public ScanRig expect(Phase phase) {
    assertEquals(phase, phase(), () -> "at " + rigMs + " ms; " + notes);
    return this;
  }

  public ScanRig expectNoFault() {
    assertNull(outputs.panel.fault, () -> "at " + rigMs + " ms");
    return this;
  }

  public ScanRig expectDriven(boolean heater, boolean ultrasound, boolean drain) {
    assertEquals(heater, outputs.heaterRelay, () -> "heater at " + rigMs + " ms");
    assertEquals(ultrasound, outputs.ultrasoundEnable, () -> "ultrasound at " + rigMs + " ms");
    assertEquals(drain, outputs.drainValveOpen, () -> "drain valve at " + rigMs + " ms");
    return this;
  }

  public ScanRig expectNothingDriven() {
    assertEquals(0, outputs.drivePermille);
    assertEquals(0, outputs.driveFrequencyHz);
    return expectDriven(false, false, false);
  }

  /** The fault was latched in the last scan, is shown, and has switched everything off in it. */
  public ScanRig expectTrip(Fault fault) {
    List<Noted> raised = of(NoticeKind.FAULT_RAISED, fault.ordinal());
    assertEquals(1, raised.size(), () -> fault + " at " + rigMs + " ms; " + notes);
    assertEquals(rigMs, raised.get(0).rigMs(), () -> fault + " was raised in another scan");
    assertEquals(fault, outputs.panel.fault);
    assertEquals(fault.severity() != Severity.CUT_OFF, outputs.cutOffRelay, "cut-off relay");
    assertTrue(outputs.buzzer, "a lockout sounds the buzzer");
    return expect(Phase.LOCKOUT).expectNothingDriven();
  }

  public ScanRig expectResetRefused(Refusal why) {
    press(Command.RESET);
    assertEquals(why, outputs.panel.refusal);
    return expect(Phase.LOCKOUT).expectNothingDriven();
  }

  /**
   * A reset is accepted; the fault has been announced once raised and once cleared. The scan before
   * is the one in which the monitors see that the cause is gone.
   */
  public ScanRig expectResetAccepted(Fault fault) {
    scan(SCAN).press(Command.RESET).expect(Phase.SELF_TEST).expectNoFault().expectNothingDriven();
    assertNull(outputs.panel.refusal);
    assertTrue(outputs.cutOffRelay, "the cut-off relay closes again");
    return expectAnnouncedOnce(fault);
  }

  public ScanRig expectAnnouncedOnce(Fault fault) {
    assertEquals(1, of(NoticeKind.FAULT_RAISED, fault.ordinal()).size(), "raised");
    assertEquals(1, of(NoticeKind.FAULT_CLEARED, fault.ordinal()).size(), "cleared");
    return this;
  }

  public ScanRig expectRefused(Command command, Refusal why) {
    Noted last = notes.get(notes.size() - 1);
    assertEquals(why, outputs.panel.refusal);
    assertEquals(
        new Noted(NoticeKind.COMMAND_REFUSED, command.ordinal(), why.ordinal(), rigMs), last);
    return this;
  }

  public ScanRig expectAccepted() {
    assertNull(outputs.panel.refusal);
    assertFalse(
        notes.stream().anyMatch(n -> n.kind() == NoticeKind.COMMAND_REFUSED && n.rigMs() == rigMs));
    return this;
  }

  public ScanRig expectNoted(NoticeKind kind, int first) {
    assertTrue(
        of(kind, first).stream().anyMatch(n -> n.rigMs() == rigMs),
        () -> kind + " " + first + " at " + rigMs + " ms; " + notes);
    return this;
  }

  public List<Noted> of(NoticeKind kind, int first) {
    return notes.stream().filter(n -> n.kind() == kind && n.first() == first).toList();
  }
}
