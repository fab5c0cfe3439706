package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.campaign.Campaign;
import dev.tankwright.campaign.CampaignReader;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.PlanException;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CampaignsPageTest {
  private static final String PAGE = "docs/campaigns.md";
  private static final Path CAMPAIGNS =
      Path.of(System.getProperty("tankwright.root"), "bench-tests/campaigns");

  @TempDir private Path folder;

  @Test
  @DisplayName("the example is a campaign, and its cases hold")
  void example() throws IOException, ScenarioException, PlanException {
    String page = Files.readString(Path.of(System.getProperty("tankwright.root"), PAGE));
    int begin = page.indexOf("```yaml\ncampaign:") + "```yaml\n".length();
    Path file = folder.resolve("example.yaml");
    Files.writeString(file, page.substring(begin, page.indexOf("```", begin)));
    Files.createDirectories(folder.resolve("base"));
    Files.copy(CAMPAIGNS.resolve("base/short-cycle.yaml"), folder.resolve("base/short-cycle.yaml"));
    Campaign campaign = CampaignReader.read(file);
    Plan plan = new Plan(campaign);
    assertEquals(2 * 2 * 2 * 3, plan.cases());
    for (int number = 0; number < plan.cases(); number += 5) {
      assertEquals(CaseOutcome.HELD, plan.run(number).outcome(), "case " + number);
    }
  }

  @Test
  @DisplayName("the project's campaigns have as many cases as the page says, the large one 20000")
  void counts() throws IOException, ScenarioException, PlanException {
    String page = Files.readString(Path.of(System.getProperty("tankwright.root"), PAGE));
    for (String name : List.of("single-faults-quick.yaml", "single-faults.yaml")) {
      int cases = new Plan(CampaignReader.read(CAMPAIGNS.resolve(name))).cases();
      String row = page.lines().filter(line -> line.contains("/" + name)).reduce("", (a, b) -> b);
      assertTrue(row.contains(" " + cases + " cases"), name + " has " + cases + ": " + row);
      assertEquals(name.equals("single-faults.yaml"), cases >= 20_000, name);
    }
  }

  @Test
  @DisplayName("every outcome of a case is explained, in order")
  void outcomes() {
    Page page = Page.read(PAGE);
    List<String> printed =
        page.rows().stream()
            .map(row -> Page.plain(row.get(0)))
            .filter(name -> name.matches("[A-Z_]+"))
            .toList();
    assertEquals(Arrays.stream(CaseOutcome.values()).map(Enum::name).toList(), printed);
  }
}
