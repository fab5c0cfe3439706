package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HuntCommandTest {
  private static final Path ROOT = Tool.root();
  private static final String CAMPAIGN =
      ROOT.resolve("bench-tests/campaigns/single-faults-quick.yaml").toString();
  private static final String SCENARIO =
      ROOT.resolve("bench-tests/scenarios/operator-mistakes/lid-open-at-start.yaml").toString();
  private static final String WALL = "The wall stays below the limiter";

  @TempDir private Path folder;

  @Test
  @DisplayName("the worst case that is written has the margin that was found when it is run")
  void replays() throws Exception {
    Tool.Result hunt =
        Tool.run(
            folder,
            "hunt",
            CAMPAIGN,
            "--requirement",
            WALL,
            "--fault",
            "heater-relay-welded",
            "--phase",
            "HEATING",
            "--budget",
            "12",
            "--out",
            "./found");
    assertEquals(0, hunt.code(), hunt.err());
    List<String> rows = Files.readAllLines(folder.resolve("found/evaluations.csv"));
    assertEquals(13, rows.size());
    String least = rows.get(12).split(",", -1)[5];
    Tool.Result run =
        Tool.run(folder, "run", "./found/worst.yaml", "--broker", "none", "--out", "./run");
    assertEquals(0, run.code(), run.err());
    // The report rounds to one decimal; the search's own tests compare every digit.
    String rounded = String.format(Locale.ROOT, "margin %.1f K", Double.parseDouble(least));
    assertTrue(run.out().contains(WALL) && run.out().contains(rounded), rounded + "\n" + run.out());
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(folder.resolve("found/margin.svg").toFile());
  }

  @Test
  @DisplayName("bad input is refused with what would be right, and nothing is written")
  void badInput() throws Exception {
    refused("no requirement 'Nothing'; it has [", SCENARIO, "--requirement", "Nothing");
    refused("--budget is 0; it must be from 1", SCENARIO, "--requirement", "x", "--budget", "0");
    refused("it must be cma-es or random", SCENARIO, "--requirement", "x", "--method", "luck");
    refused("select cells of a campaign", SCENARIO, "--requirement", "x", "--fault", "y");
    refused("its faults are [", CAMPAIGN, "--requirement", WALL, "--fault", "gremlin");
    refused("missing.yaml", "./missing.yaml", "--requirement", "x");
    assertFalse(Files.exists(folder.resolve("out")));
  }

  private void refused(String message, String... args) throws Exception {
    String[] all = new String[args.length + 3];
    all[0] = "hunt";
    System.arraycopy(args, 0, all, 1, args.length);
    all[args.length + 1] = "--out";
    all[args.length + 2] = "./out";
    Tool.Result result = Tool.run(folder, all);
    assertEquals(2, result.code(), result.err());
    assertTrue(result.err().contains(message), result.err());
  }

  @Test
  @DisplayName("the command's jar holds the optimiser and no JUnit")
  void jarHoldsNoJunit() throws Exception {
    try (ZipFile jar = new ZipFile(System.getProperty("tankwright.jar"))) {
      List<String> names = jar.stream().map(entry -> entry.getName()).toList();
      assertTrue(names.stream().anyMatch(name -> name.startsWith("org/hipparchus/optim/")));
      assertEquals(
          List.of(),
          names.stream()
              .filter(n -> n.startsWith("org/junit/") || n.startsWith("org/opentest4j/"))
              .toList());
    }
  }
}
