package dev.tankwright.campaign;

import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.FileBlock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what a campaign injects. */
final class InjectionReader {
  private static final String KEY = "faults";
  private static final String EXCEPT = "except";
  private static final String EVERY_PART = "every-part";
  private static final List<Action> PARTS =
      Arrays.stream(PartFault.values()).<Action>map(Action.Break::new).toList();

  private final FileBlock block;
  private final Scenario base;

  InjectionReader(FileBlock block, Scenario base) {
    this.block = block;
    this.base = base;
  }

  List<Injection> read() {
    List<Action> actions =
        block.actions(KEY, base.profile(), base.bath().levels().brimLitres(), new Names());
    List<Injection> injections = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Action action : actions) {
      Injection injection = Injection.of(action);
      if (seen.add(injection.name())) {
        injections.add(injection);
      } else {
        block.report(KEY, "'" + injection.name() + "' is injected twice; keep one");
      }
    }
    for (String name : block.texts(EXCEPT)) {
      if (!injections.removeIf(injection -> injection.name().equals(name))) {
        block.report(EXCEPT, "'" + name + "' is not among the faults; it must be one of " + seen);
      }
    }
    return injections;
  }

  /** A part's name stands for its breaking by the usual size, {@code every-part} for all parts. */
  private static final class Names implements FileBlock.Words {
    @Override
    public List<Action> of(String word) {
      if (word.equals(EVERY_PART)) {
        return PARTS;
      }
      Optional<PartFault> part =
          Arrays.stream(PartFault.values()).filter(fault -> fault.key().equals(word)).findFirst();
      return part.<List<Action>>map(fault -> List.of(new Action.Break(fault))).orElse(List.of());
    }

    @Override
    public String wanted() {
      return "a fault is a part's name such as heater-open, 'every-part', or an action as in"
          + " 'break: heater-partial' and 'size: 40 %'";
    }
  }
}
