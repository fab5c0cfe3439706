package dev.tankwright.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class CampaignRunTest {
  @TempDir private Path folder;
  private Plan plan;
  private final List<CaseResult> ended = new ArrayList<>();

  @BeforeEach
  void makePlan() throws IOException, ScenarioException, PlanException {
    plan = SmallCampaign.plan(folder);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 100})
  @DisplayName("every case ends once, and comes to the same whatever the number of threads")
  void threads(int threads) throws IOException, CaseException, InterruptedException {
    new CampaignRun(plan, threads).run(Shard.WHOLE, List.of(), listener(() -> {}));
    ended.sort(Comparator.comparingInt(CaseResult::number));
    assertEquals(SmallCampaign.run(plan, Shard.WHOLE), ended);
  }

  @Test
  @DisplayName("what is done already is not done again")
  void resumed() throws IOException, CaseException, InterruptedException {
    Shard shard = new Shard(2, 3);
    List<CaseResult> all = SmallCampaign.run(plan, shard);
    new CampaignRun(plan, 2).run(shard, all.subList(3, 10), listener(() -> {}));
    ended.addAll(all.subList(3, 10));
    ended.sort(Comparator.comparingInt(CaseResult::number));
    assertEquals(all, ended);
  }

  @Test
  @DisplayName("when it is stopped, what has ended is handed on and nothing further begins")
  void stopped() throws IOException, CaseException, InterruptedException {
    CampaignRun run = new CampaignRun(plan, 2);
    run.run(Shard.WHOLE, List.of(), listener(run::stop));
    assertTrue(ended.size() >= 1 && ended.size() < plan.cases(), ended.size() + " ended");
    ended.forEach(result -> assertEquals(plan.run(result.number()), result));
  }

  @Test
  @DisplayName("a result that cannot be kept ends the run with what the disk said")
  void diskIsFull() {
    IOException full = new IOException("No space left on device");
    CampaignRun run = new CampaignRun(plan, 2);
    IOException e =
        assertThrows(
            IOException.class,
            () ->
                run.run(
                    Shard.WHOLE,
                    List.of(),
                    new CampaignRun.Listener() {
                      @Override
                      public void ended(CaseResult result) throws IOException {
                        throw full;
                      }

                      @Override
                      public void tick() {}
                    }));
    assertSame(full, e);
  }

  private CampaignRun.Listener listener(Runnable after) {
    return new CampaignRun.Listener() {
      @Override
      public void ended(CaseResult result) {
        ended.add(result);
        after.run();
      }

      @Override
      public void tick() {}
    };
  }
}
