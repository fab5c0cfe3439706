package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Severity;

/**
 * What must hold in every scan, whatever the inputs: an observer with a memory of its own, which
 * sees only pins, panel and notices.
 */
final class ScanInvariants {
  private final int scanMaximum;
  private final int dryTime;
  private final int centre;
  private final int sweep;
  private Phase phase = Phase.SELF_TEST;
  private boolean pulse;
  private boolean begun;
  private int lastMillis;
  private int lastCommand;
  private int dryMs = -1;
  private int latched;
  private int remaining = Integer.MAX_VALUE;
  private boolean newCycle;

  ScanInvariants(DeviceProfile profile) {
    scanMaximum = profile.get(Parameter.SCAN_MAXIMUM);
    dryTime = profile.get(Parameter.DRY_TIME);
    centre = profile.get(Parameter.DRIVE_FREQUENCY);
    sweep = profile.get(Parameter.SWEEP_WIDTH);
  }

  /** Hears of every notice of a scan before {@link #check}. */
  void hear(NoticeKind kind, int first) {
    switch (kind) {
      case FAULT_RAISED -> {
        require((latched & Fault.of(first).bit()) == 0, "a fault raised twice");
        latched |= Fault.of(first).bit();
      }
      case FAULT_CLEARED -> {
        require((latched & Fault.of(first).bit()) != 0, "a fault cleared that was not raised");
        latched &= ~Fault.of(first).bit();
      }
      case CYCLE_STARTED -> newCycle = true;
      case NOTICES_LOST -> require(false, "no notice is lost when the ring is drained");
      default -> {}
    }
  }

  int latched() {
    return latched;
  }

  void check(Inputs in, Outputs out) {
    Command command = command(in);
    dryMs = in.minimumLevelWet() ? -1 : dryMs < 0 ? 0 : Math.min(1_000_000, dryMs + dt(in));
    checkUltrasound(in, out);
    checkHeater(in, out);
    checkLatched(out);
    checkPhase(command, out);
    require(
        !out.drainValveOpen || !(out.heaterRelay || out.ultrasoundEnable), "drain while in use");
    require(!out.drainValveOpen || in.mainsPresent(), "drain without mains");
    require(out.watchdogPulse != pulse, "the watchdog pulse changes in every scan");
    remember(in, out);
  }

  private void checkUltrasound(Inputs in, Outputs out) {
    if (!out.ultrasoundEnable) {
      assertEquals(0, out.drivePermille);
      assertEquals(0, out.driveFrequencyHz);
      return;
    }
    require(in.lidMakeContact() && !in.lidBreakContact(), "ultrasound under an open lid");
    require(in.drainClosedEnd() && !in.drainOpenEnd(), "ultrasound over an open drain");
    require(dryMs < dryTime, "ultrasound over a dry tank");
    require(in.mainsPresent(), "ultrasound without mains");
    require(Math.abs(out.driveFrequencyHz - centre) <= sweep, "frequency out of its sweep");
    require(out.drivePermille >= 1 && out.drivePermille <= 1_000, "drive level out of range");
  }

  private void checkHeater(Inputs in, Outputs out) {
    if (!out.heaterRelay) {
      return;
    }
    require(valid(in.controlSensorCounts), "heat with a broken control sensor");
    require(valid(in.cutOffSensorCounts), "heat with a broken cut-off sensor");
    require(in.drainClosedEnd() && !in.drainOpenEnd(), "heat over an open drain");
    require(dryMs < dryTime, "heat over a dry tank");
    require(in.mainsPresent() && out.cutOffRelay, "heat without mains or through an open relay");
  }

  private void checkLatched(Outputs out) {
    Severity worst = null;
    for (int i = 0; i < Fault.count(); i++) {
      Severity severity = Fault.of(i).severity();
      if ((latched & Fault.of(i).bit()) != 0 && (worst == null || severity.compareTo(worst) > 0)) {
        worst = severity;
      }
    }
    assertEquals(worst, out.panel.fault == null ? null : out.panel.fault.severity());
    boolean stopping = worst == Severity.LOCKOUT || worst == Severity.CUT_OFF;
    assertEquals(
        stopping, out.panel.phase == Phase.LOCKOUT, "locked out exactly when a fault stops");
    if (stopping) {
      boolean driven = out.heaterRelay || out.ultrasoundEnable || out.drainValveOpen;
      require(!driven, "something driven in a lockout");
    }
    require(worst != Severity.CUT_OFF || !out.cutOffRelay, "relay closed after a cut-off");
  }

  private void checkPhase(Command command, Outputs out) {
    Phase now = out.panel.phase;
    if (now.isRunning() && !phase.isRunning()) {
      boolean asked =
          (phase == Phase.STANDBY && command == Command.START)
              || (phase == Phase.PAUSED && command == Command.RESUME);
      require(asked, now + " entered from " + phase + " without a command");
    }
    require(phase != Phase.LOCKOUT || now == phase || command == Command.RESET, "lockout left");
    boolean grew = out.panel.remainingMs > remaining;
    require(!grew || newCycle || out.panel.degassingRequired, "remaining time grew");
    require(now.isInCycle() || out.panel.remainingMs == 0, "time remains outside a cycle");
    require(!out.ultrasoundEnable || now.isRunning(), "sounded outside a running phase");
    boolean keptWarm = out.panel.keepingWarm && (now == Phase.STANDBY || now == Phase.COMPLETE);
    require(!out.heaterRelay || now.isRunning() || keptWarm, "heated outside a running phase");
    require(!out.drainValveOpen || now == Phase.DRAINING, "drain open outside draining");
  }

  private Command command(Inputs in) {
    boolean news = begun && in.commandSequence != lastCommand;
    return news ? in.command : Command.NONE;
  }

  private int dt(Inputs in) {
    int step = in.millis - lastMillis;
    return step < 0 || step > scanMaximum ? scanMaximum : step;
  }

  private void remember(Inputs in, Outputs out) {
    phase = out.panel.phase;
    pulse = out.watchdogPulse;
    remaining = phase.isInCycle() ? out.panel.remainingMs : Integer.MAX_VALUE;
    newCycle = false;
    begun = true;
    lastMillis = in.millis;
    lastCommand = in.commandSequence;
  }

  private static boolean valid(int counts) {
    return counts > 15 && counts < 4_080;
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new AssertionError(what);
    }
  }
}
