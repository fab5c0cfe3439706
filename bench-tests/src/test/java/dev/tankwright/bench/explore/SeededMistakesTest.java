package dev.tankwright.bench.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Evidence;
import dev.tankwright.extent.Extent;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.objectweb.asm.Opcodes;

/** A proof that cannot fail proves nothing: mistakes put in on purpose are found. */
class SeededMistakesTest {
  private static final List<String> TABLE = new CopyOnWriteArrayList<>();

  @AfterAll
  static void print() {
    TABLE.forEach(System.out::println);
  }

  static List<Arguments> some() {
    return Extent.some(mistakes(), 3, "mistakes put into the controller");
  }

  private static List<Arguments> mistakes() {
    return List.of(
        of(
            "the lid always counts as closed",
            "sensing/Measurements",
            "isLidClosed",
            yes(),
            "none",
            "LID_STOPS_ULTRASOUND"),
        of("no fault stops", "safety/FaultLatch", "isStopping", no(), "none", "FAULT_LOCKS_OUT"),
        of(
            "no fault cuts off",
            "safety/FaultLatch",
            "isCutOff",
            no(),
            "none",
            "CUT_OFF_OPENS_RELAY"),
        of(
            "causes are always gone",
            "safety/Guard",
            "isCausePresent",
            no(),
            "none",
            "LOCKOUT_NEEDS_RESET"),
        of("causes never go", "safety/Guard", "isCausePresent", yes(), "none", "STANDBY_IN_REACH"),
        of(
            "a fault is latched again and again",
            "safety/FaultLatch",
            "raise",
            Mutation.neverJumps(Opcodes.IFNE, false),
            "none",
            "FAULTS_TOLD_ONCE"),
        of(
            "no fault is shown",
            "safety/FaultLatch",
            "worst",
            Mutation.answersNothing(),
            "none",
            "PANEL_SHOWS_WORST"),
        of(
            "the drain always counts as shut",
            "sensing/Measurements",
            "isDrainShut",
            yes(),
            "drain-closed-end",
            "NOTHING_OVER_OPEN_DRAIN"),
        of(
            "the minimum always counts as wet",
            "sensing/Measurements",
            "isMinimumWet",
            yes(),
            "none",
            "NOTHING_OVER_DRY_TANK"),
        of(
            "mains always counts as present",
            "sensing/Measurements",
            "isMains",
            yes(),
            "none",
            "NOTHING_WITHOUT_MAINS"),
        of(
            "every command is taken as given",
            "sequence/Situation",
            "takes",
            yes(),
            "none",
            "LOCKOUT_NEEDS_RESET"),
        of(
            "a command acts again and again",
            "sensing/Keys",
            "sense",
            Mutation.neverJumps(Opcodes.IF_ICMPEQ, true),
            "commands",
            "LOCKOUT_NEEDS_RESET"),
        of(
            "a pause that expires goes on heating",
            "sequence/PhaseTable",
            "<clinit>",
            Mutation.leadsTo("PAUSED", "PAUSE_EXPIRED", "HEATING"),
            "none",
            "RUNS_ON_COMMAND"),
        of(
            "a passed self test locks out",
            "sequence/PhaseTable",
            "<clinit>",
            Mutation.leadsTo("SELF_TEST", "SELF_TEST_PASSED", "LOCKOUT"),
            "none",
            "FAULT_LOCKS_OUT"),
        of(
            "the time of degassing is counted up",
            "sequence/DegassingPhase",
            "decide",
            Mutation.swaps(Opcodes.ISUB, Opcodes.IADD),
            "none",
            "TIME_LEFT_FALLS"),
        of(
            "a power cut is not counted",
            "sequence/PhaseChange",
            "powerLost",
            Mutation.doesNothing(),
            "none",
            "POWER_CUTS_END_CYCLE"),
        of(
            "a cycle is forgotten when the power goes",
            "sequence/PhaseTable",
            "<clinit>",
            Mutation.leadsTo("SELF_TEST", "CYCLE_FOUND", "STANDBY"),
            "none",
            "CYCLE_OUTLASTS_POWER"),
        of(
            "a cycle goes on by itself when the power is back",
            "sequence/PhaseTable",
            "<clinit>",
            Mutation.leadsTo("SELF_TEST", "CYCLE_FOUND", "HEATING"),
            "none",
            "CYCLE_OUTLASTS_POWER"),
        of(
            "the guard lets a broken sensor heat",
            "safety/Guard",
            "permit",
            Mutation.takesAnswerFor("Channel", "isValid", true),
            "cut-off-sensor",
            "NO_HEAT_WITHOUT_SENSORS"),
        of(
            "what the monitors find is not latched",
            "safety/FaultLatch",
            "raiseAll",
            Mutation.doesNothing(),
            "cut-off-sensor",
            "NO_HEAT_OVER_LIMIT"),
        of(
            "every recipe is allowed",
            "sequence/RecipeLimits",
            "refusal",
            Mutation.answersNothing(),
            "none (fine)",
            "SCAN_THROWS_NOTHING"));
  }

  private static Arguments of(
      String name, String type, String method, Mutation.Edit edit, String faulty, String rule) {
    return Arguments.of(name, new Mutation(name, type, method, edit), faulty, rule);
  }

  private static Mutation.Edit yes() {
    return Mutation.answers(true);
  }

  private static Mutation.Edit no() {
    return Mutation.answers(false);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("some")
  @DisplayName("a mistake is found, and its shortest way fails as a scenario")
  void found(String name, Mutation mutation, String faulty, String rule)
      throws ReflectiveOperationException {
    MutantLoader loader = new MutantLoader(mutation);
    List<String> found = explore(loader, faulty);
    assertTrue(
        loader.changes() > 0,
        mutation.className() + "." + mutation.method() + " has nothing to change");
    assertTrue(!found.isEmpty(), "not found: " + name);
    String row = String.format("%-42s %-24s %3s scans", name, found.get(0), found.get(1));
    TABLE.add(row);
    assertEquals(rule, found.get(0), name);
    // A scan that throws ends a run with what was thrown.
    boolean thrown = rule.equals("SCAN_THROWS_NOTHING");
    assertTrue(found.get(2).startsWith(thrown ? "java.lang." : "FAILED"), found.get(2));
    boolean named = !thrown && !rule.equals("STANDBY_IN_REACH");
    assertTrue(!named || found.get(2).contains(rule), found.get(2));
  }

  @Test
  @DisplayName("every mistake changes something in the class that it names")
  void everyMistakeIsOne() throws ReflectiveOperationException {
    for (Arguments one : mistakes()) {
      Mutation mutation = (Mutation) one.get()[1];
      MutantLoader loader = new MutantLoader(mutation);
      loader.loadClass(mutation.className());
      assertTrue(loader.changes() > 0, mutation.className() + "." + mutation.method());
    }
  }

  @Test
  @Evidence("the set without a faulty part once more; ExplorationTest proves it in every build")
  @DisplayName("nothing is found without a mistake")
  void nothingWithout() throws ReflectiveOperationException {
    assertEquals(List.of(), explore(new MutantLoader(null), "none"));
  }

  @SuppressWarnings("unchecked")
  private static List<String> explore(ClassLoader loader, String faulty)
      throws ReflectiveOperationException {
    Object run = loader.loadClass(MutantRun.class.getName()).getConstructor().newInstance();
    return ((Function<String, List<String>>) run).apply(faulty);
  }
}
