package dev.tankwright.events;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is kept of one cycle. Immutable.
 *
 * <p>What belongs into it follows the practice of cycle records for washers and cleaners (ISO
 * 15883-1 on recording, ANSI/AAMI ST79 on documentation; from memory): device, cycle number, start
 * and end, operator, load, programme, measured values and faults. A release of the load is a
 * person's decision that this device does not ask for, so there is none in it.
 *
 * @param device id of the device
 * @param softwareVersion version of the software that ran the cycle
 * @param cycle number of the cycle
 * @param programme what kind of cycle
 * @param outcome how it ended
 * @param cause what ended it before its time; empty when completed
 * @param started when it started
 * @param ended when it ended
 * @param order set values, operator and load, as far as known
 * @param solution the solution in the tank; empty where its filling was not told
 * @param setpointMilliC setpoint, m°C
 * @param temperatures extremes and mean while degassing and cleaning; empty when neither took place
 * @param phaseMs time spent in each phase of a cycle, ms
 * @param interruptions how often it was paused
 * @param pauses its pauses, the first {@value OpenCycle#PAUSES} of them
 * @param degassed whether the solution was degassed in this cycle
 * @param ultrasoundMs time for which the ultrasound was driven, ms
 * @param heaterMs time for which the heater was on, ms
 * @param energyMilliWattHours estimate of the energy taken, by rated powers, mWh
 * @param faults faults latched during the cycle, in the order of their declaration
 * @param simulated whether a simulator stood in for the device
 */
public record CycleRecord(
    String device,
    String softwareVersion,
    int cycle,
    Programme programme,
    Outcome outcome,
    Optional<Cause> cause,
    Instant started,
    Instant ended,
    CycleOrder order,
    Optional<SolutionInUse> solution,
    int setpointMilliC,
    Optional<Temperatures> temperatures,
    Map<Phase, Long> phaseMs,
    int interruptions,
    List<Pause> pauses,
    boolean degassed,
    long ultrasoundMs,
    long heaterMs,
    long energyMilliWattHours,
    List<Fault> faults,
    boolean simulated) {

  /** Copies what could be changed from outside. */
  public CycleRecord {
    phaseMs = Collections.unmodifiableMap(new EnumMap<>(phaseMs));
    pauses = List.copyOf(pauses);
    faults = List.copyOf(faults);
  }

  /** In what the cycle did not go as it was set, by what was measured; empty when it did. */
  public List<Deviation> deviations() {
    return Deviations.of(this);
  }

  /** Whether the cycle went as it was set, by what was measured. */
  public CycleVerdict verdict() {
    return deviations().isEmpty() ? CycleVerdict.AS_SET : CycleVerdict.DEVIATING;
  }

  /** The record as a document, as it is published. */
  public Document document() {
    return CycleRecordDocument.of(this);
  }

  /** The record as a file: the same document, indented, in UTF-8, with a line end. */
  public byte[] toJson() {
    return JsonWriter.indented(json -> JsonWriter.write(json, document()));
  }

  /**
   * Temperatures by the control sensor.
   *
   * @param minimumMilliC the lowest, m°C
   * @param meanMilliC the mean over time, m°C
   * @param maximumMilliC the highest, m°C
   */
  public record Temperatures(int minimumMilliC, int meanMilliC, int maximumMilliC) {}
}
