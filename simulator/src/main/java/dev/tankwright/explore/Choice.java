package dev.tankwright.explore;

/**
 * What the world does in one scan. Immutable.
 *
 * @param temperature class of the bath's temperature
 * @param control counts of the control sensor
 * @param cutOff counts of the cut-off sensor
 * @param lidMake lid contact that closes
 * @param lidBreak lid contact that opens
 * @param minimum minimum contact, wet
 * @param fillMark fill mark, wet
 * @param openEnd drain's open end
 * @param closedEnd drain's closed end
 * @param current heater current
 * @param running generator running
 * @param generatorFault generator's fault line
 * @param mains mains present
 * @param step how the counter moves
 * @param key what stands on the command's pins
 */
record Choice(
    int temperature,
    int control,
    int cutOff,
    boolean lidMake,
    boolean lidBreak,
    boolean minimum,
    boolean fillMark,
    Answer openEnd,
    Answer closedEnd,
    Answer current,
    Answer running,
    boolean generatorFault,
    boolean mains,
    Step step,
    Key key) {

  Choice withControl(int counts) {
    return new Choice(
        temperature,
        counts,
        cutOff,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        current,
        running,
        generatorFault,
        mains,
        step,
        key);
  }

  Choice withCutOff(int counts) {
    return new Choice(
        temperature,
        control,
        counts,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        current,
        running,
        generatorFault,
        mains,
        step,
        key);
  }

  Choice withLid(boolean make, boolean broken) {
    return new Choice(
        temperature,
        control,
        cutOff,
        make,
        broken,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        current,
        running,
        generatorFault,
        mains,
        step,
        key);
  }

  Choice withLevel(boolean low, boolean high) {
    return new Choice(
        temperature,
        control,
        cutOff,
        lidMake,
        lidBreak,
        low,
        high,
        openEnd,
        closedEnd,
        current,
        running,
        generatorFault,
        mains,
        step,
        key);
  }

  Choice withDrain(Answer open, Answer closed) {
    return new Choice(
        temperature,
        control,
        cutOff,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        open,
        closed,
        current,
        running,
        generatorFault,
        mains,
        step,
        key);
  }

  Choice withCurrent(Answer answer) {
    return new Choice(
        temperature,
        control,
        cutOff,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        answer,
        running,
        generatorFault,
        mains,
        step,
        key);
  }

  Choice withGenerator(Answer runs, boolean fault) {
    return new Choice(
        temperature,
        control,
        cutOff,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        current,
        runs,
        fault,
        mains,
        step,
        key);
  }

  Choice withStep(Step other) {
    return new Choice(
        temperature,
        control,
        cutOff,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        current,
        running,
        generatorFault,
        mains,
        other,
        key);
  }

  Choice withKey(Key other) {
    return new Choice(
        temperature,
        control,
        cutOff,
        lidMake,
        lidBreak,
        minimum,
        fillMark,
        openEnd,
        closedEnd,
        current,
        running,
        generatorFault,
        mains,
        step,
        other);
  }
}
