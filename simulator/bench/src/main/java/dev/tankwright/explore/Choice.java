package dev.tankwright.explore;

import java.util.function.Consumer;

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
    return with(draft -> draft.control = counts);
  }

  Choice withCutOff(int counts) {
    return with(draft -> draft.cutOff = counts);
  }

  Choice withLid(boolean make, boolean broken) {
    return with(
        draft -> {
          draft.lidMake = make;
          draft.lidBreak = broken;
        });
  }

  Choice withLevel(boolean low, boolean high) {
    return with(
        draft -> {
          draft.minimum = low;
          draft.fillMark = high;
        });
  }

  Choice withDrain(Answer open, Answer closed) {
    return with(
        draft -> {
          draft.openEnd = open;
          draft.closedEnd = closed;
        });
  }

  Choice withCurrent(Answer answer) {
    return with(draft -> draft.current = answer);
  }

  Choice withGenerator(Answer runs, boolean fault) {
    return with(
        draft -> {
          draft.running = runs;
          draft.generatorFault = fault;
        });
  }

  Choice withStep(Step other) {
    return with(draft -> draft.step = other);
  }

  Choice withKey(Key other) {
    return with(draft -> draft.key = other);
  }

  private Choice with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.choice();
  }

  /** A choice in the making. */
  private static final class Draft {
    private final int temperature;
    private int control;
    private int cutOff;
    private boolean lidMake;
    private boolean lidBreak;
    private boolean minimum;
    private boolean fillMark;
    private Answer openEnd;
    private Answer closedEnd;
    private Answer current;
    private Answer running;
    private boolean generatorFault;
    private final boolean mains;
    private Step step;
    private Key key;

    Draft(Choice from) {
      temperature = from.temperature;
      control = from.control;
      cutOff = from.cutOff;
      lidMake = from.lidMake;
      lidBreak = from.lidBreak;
      minimum = from.minimum;
      fillMark = from.fillMark;
      openEnd = from.openEnd;
      closedEnd = from.closedEnd;
      current = from.current;
      running = from.running;
      generatorFault = from.generatorFault;
      mains = from.mains;
      step = from.step;
      key = from.key;
    }

    Choice choice() {
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
          key);
    }
  }
}
