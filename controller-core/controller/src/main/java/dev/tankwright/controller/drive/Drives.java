package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Measurements;

/** Turns the demand of the sequence into what each actuator should do. */
public final class Drives {
  private final HeaterControl heater;
  private final UltrasoundDrive ultrasound;
  private final Wanted wanted = new Wanted();
  private final ProgramFlow flow;

  /** Makes the drives of a device, all at rest. */
  public Drives(DeviceProfile profile, ProgramFlow flow) {
    this.flow = flow;
    heater = new HeaterControl(profile);
    ultrasound = new UltrasoundDrive(profile);
  }

  /** What each actuator should do; the same object in every scan. */
  public Wanted wanted() {
    return wanted;
  }

  /** Works out what is wanted in this scan. */
  public void shape(Demand demand, Measurements measurements) {
    int dtMs = measurements.dtMs();
    wanted.heater = heater.regulate(demand.heatToMilliC, measurements.control(), dtMs);
    wanted.drain = demand.drain;
    ultrasound.shape(demand.ultrasound, dtMs, wanted);
    flow.pass(ProgramFlow.SHAPED);
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    heater.carry(state);
    ultrasound.carry(state);
  }
}
