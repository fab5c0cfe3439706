package dev.tankwright.events;

import dev.tankwright.controller.board.NoticeKind;

/**
 * The kinds of events, by the name that stands in the CloudEvents attribute {@code type}. The names
 * are this project's own, in reverse-DNS form with a version, as CloudEvents 1.0 recommends for
 * {@code type}; a change that a reader could trip over makes a new version.
 */
public enum EventType {
  /** The device has been powered up; no notice stands behind it. */
  DEVICE_STARTED("dev.tankwright.device.started.v1"),
  /** The phase changed. */
  PHASE_CHANGED("dev.tankwright.device.phase-changed.v1"),
  /** The host's clock was set; no notice stands behind it. */
  CLOCK_SET("dev.tankwright.device.clock-set.v1"),
  /** What the device had kept over the loss of power was damaged or lost; from the host. */
  MEMORY_TROUBLE("dev.tankwright.device.memory-trouble.v1"),
  /** A cycle started. */
  CYCLE_STARTED("dev.tankwright.cycle.started.v1"),
  /** The cycle is held. */
  CYCLE_PAUSED("dev.tankwright.cycle.paused.v1"),
  /** The cycle goes on. */
  CYCLE_RESUMED("dev.tankwright.cycle.resumed.v1"),
  /** The cycle ended as planned. */
  CYCLE_COMPLETED("dev.tankwright.cycle.completed.v1"),
  /** The operator, or a pause that lasted too long, ended the cycle. */
  CYCLE_STOPPED("dev.tankwright.cycle.stopped.v1"),
  /** A fault ended the cycle. */
  CYCLE_INTERRUPTED("dev.tankwright.cycle.interrupted.v1"),
  /** The record of a cycle, right after its end; no notice stands behind it. */
  CYCLE_RECORDED("dev.tankwright.cycle.recorded.v1", CycleRecordDocument.SCHEMA),
  /** A fault was latched. */
  FAULT_RAISED("dev.tankwright.fault.raised.v1"),
  /** A fault was cleared. */
  FAULT_CLEARED("dev.tankwright.fault.cleared.v1"),
  /** The operator's reset was accepted: the lockout is left. No notice of its own. */
  FAULT_RESET("dev.tankwright.fault.reset.v1"),
  /** A command was refused. */
  COMMAND_REFUSED("dev.tankwright.command.refused.v1"),
  /** Fresh solution was declared. */
  SOLUTION_FILLED("dev.tankwright.solution.filled.v1"),
  /** Fresh solution stands in for a former one; right after the one that tells the filling. */
  SOLUTION_CHANGED("dev.tankwright.solution.changed.v1"),
  /** The solution has been degassed. */
  SOLUTION_DEGASSED("dev.tankwright.solution.degassed.v1"),
  /** The tank has been emptied. */
  SOLUTION_DRAINED("dev.tankwright.solution.drained.v1"),
  /** The solution has reached its age. */
  SOLUTION_DUE("dev.tankwright.solution.due.v1"),
  /** The working day is over: the tank is to be drained and dried. */
  DRAIN_DUE("dev.tankwright.maintenance.drain-due.v1"),
  /** The next foil check is due. */
  FOIL_DUE("dev.tankwright.maintenance.foil-check-due.v1"),
  /** A foil check was judged. */
  FOIL_CHECKED("dev.tankwright.foil.checked.v1"),
  /** Notices were lost inside the device before they could become events. */
  NOTICES_LOST("dev.tankwright.notices.lost.v1");

  private static final String SCHEMAS = "tag:tankwright.dev,2026:";

  private final String type;
  private final String schema;

  EventType(String type) {
    this(type, type);
  }

  EventType(String type, String schema) {
    this.type = type;
    this.schema = schema;
  }

  /** Value of the CloudEvents attribute {@code type}. */
  public String type() {
    return type;
  }

  /** Name of the JSON Schema of the data, as its file is named. */
  public String schemaName() {
    return schema;
  }

  /**
   * Value of the CloudEvents attribute {@code dataschema}: a URI that names the JSON Schema of the
   * data, a tag as RFC 4151 has it. It is a name and no place: nothing is to be fetched from it.
   */
  public String schemaUri() {
    return SCHEMAS + schema;
  }

  /** The event that a notice becomes. */
  public static EventType of(NoticeKind kind) {
    return switch (kind) {
      case PHASE_CHANGED -> PHASE_CHANGED;
      case CYCLE_STARTED -> CYCLE_STARTED;
      case CYCLE_PAUSED -> CYCLE_PAUSED;
      case CYCLE_RESUMED -> CYCLE_RESUMED;
      case CYCLE_COMPLETED -> CYCLE_COMPLETED;
      case CYCLE_STOPPED -> CYCLE_STOPPED;
      case CYCLE_INTERRUPTED -> CYCLE_INTERRUPTED;
      case FAULT_RAISED -> FAULT_RAISED;
      case FAULT_CLEARED -> FAULT_CLEARED;
      case COMMAND_REFUSED -> COMMAND_REFUSED;
      case SOLUTION_FILLED -> SOLUTION_FILLED;
      case SOLUTION_DEGASSED -> SOLUTION_DEGASSED;
      case SOLUTION_DRAINED -> SOLUTION_DRAINED;
      case SOLUTION_DUE -> SOLUTION_DUE;
      case DRAIN_DUE -> DRAIN_DUE;
      case FOIL_DUE -> FOIL_DUE;
      case FOIL_CHECKED -> FOIL_CHECKED;
      case NOTICES_LOST -> NOTICES_LOST;
    };
  }
}
