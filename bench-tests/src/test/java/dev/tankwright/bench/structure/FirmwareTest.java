package dev.tankwright.bench.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.CleanerController;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The controller can be ported line by line: its instructions say so. */
class FirmwareTest {
  private static final String CONTROLLER = "dev/tankwright/controller/CleanerController";
  private static final String[] HOST = {
    "java/lang/Thread",
    "java/lang/System",
    "java/lang/Runtime",
    "java/lang/Process",
    "java/time/",
    "java/io/",
    "java/nio/",
    "java/net/",
    "java/util/concurrent/",
    "java/util/Random"
  };

  @Test
  @DisplayName("no class of the controller computes, keeps or passes floating point")
  void noFloatingPoint() throws Exception {
    assertEquals(List.of(), controller().floatingPoint());
  }

  @Test
  @DisplayName(
      "nothing that scan, capture or restore can reach allocates, boxes or leaves the core")
  void noAllocation() throws Exception {
    assertEquals(List.of(), controller().allocationsFrom(CONTROLLER, "scan", "capture", "restore"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "KeptRecord, load save",
    "Keeper, powerUp afterScan",
    "RunningChecksum, step isWrong"
  })
  @DisplayName("nothing that keeping, recalling or checking memory can reach allocates")
  void noAllocationInMemory(String name, String methods) throws Exception {
    String owner = "dev/tankwright/controller/memory/" + name;
    Firmware controller = controller();
    // What is read and written, given and taken, is reached through interfaces.
    String reached =
        controller.reachable(owner, List.of(methods.split(" "))).stream()
            .map(method -> method.id)
            .collect(Collectors.joining("\n"));
    assertTrue(reached.contains("memory/Crc32.word("), reached);
    assertEquals(List.of(), controller.allocationsFrom(owner, methods.split(" ")));
  }

  @Test
  @DisplayName("no class of the controller knows threads, clocks, files or chance")
  void noHost() throws Exception {
    assertEquals(List.of(), controller().callsInto(HOST));
  }

  @Test
  @DisplayName("the scan reaches every phase, every monitor and both kinds of regulation")
  void reachesEverything() throws Exception {
    String reached =
        controller().reachable(CONTROLLER, List.of("scan")).stream()
            .map(method -> method.id)
            .collect(Collectors.joining("\n"));
    assertTrue(CompiledClasses.around(CleanerController.class).size() > 70);
    for (ClassFacts fact : CompiledClasses.around(CleanerController.class)) {
      String name = fact.name;
      if (name.endsWith("Monitor") || name.endsWith("Phase") || name.endsWith("Regulation")) {
        // A phase's constants are no code, and a monitor's base class is reached by its own name.
        boolean enumeration = name.endsWith("/Phase");
        assertTrue(enumeration || reached.contains(name + "."), name + " is not reached");
      }
    }
    assertTrue(
        reached.contains("board/NoticeRing.put("), "calls through an interface are followed");
  }

  @Test
  @DisplayName("each rule finds its breach in a class that breaks them all")
  void rulesCanFail() throws Exception {
    Firmware bad = new Firmware(List.of(CompiledClasses.of(BadFirmware.class)));
    String self = BadFirmware.class.getName().replace('.', '/');
    for (String method : List.of("adds", "converts", "divides", "keeps", "passes", "root")) {
      assertFound(bad.floatingPoint(), self + "." + method);
    }
    assertFound(bad.floatingPoint(), self + ".level");
    List<String> allocations = bad.allocationsFrom(self, "scan");
    for (String method :
        List.of("object", "array", "references", "grid", "lambda", "joins", "boxes", "copies")) {
      assertFound(allocations, self + "." + method);
    }
    assertTrue(
        allocations.stream().noneMatch(a -> a.contains(".unreached")), allocations.toString());
    assertFound(bad.callsInto(HOST), self + ".clock");
    assertFound(bad.callsInto(HOST), self + ".sleeps");
  }

  private static void assertFound(List<String> found, String what) {
    assertTrue(found.stream().anyMatch(f -> f.startsWith(what)), what + " is not in " + found);
  }

  private static Firmware controller() throws Exception {
    return new Firmware(CompiledClasses.around(CleanerController.class));
  }
}
