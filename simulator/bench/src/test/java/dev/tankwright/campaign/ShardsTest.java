package dev.tankwright.campaign;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShardsTest {
  @TempDir private Path folder;
  private Plan plan;
  private Path one;
  private Path two;
  private Path three;

  @BeforeEach
  void leaveShares() throws IOException, ScenarioException, PlanException, ResultFileException {
    plan = SmallCampaign.plan(folder);
    one = SmallCampaign.leave(folder.resolve("one"), plan, new Shard(1, 3), "1.0");
    two = SmallCampaign.leave(folder.resolve("two"), plan, new Shard(2, 3), "1.0");
    three = SmallCampaign.leave(folder.resolve("three"), plan, new Shard(3, 3), "1.0");
  }

  @Test
  @DisplayName("shards joined in any order are the whole, to the byte")
  void joined() throws IOException, ResultFileException {
    Path whole = SmallCampaign.leave(folder.resolve("whole"), plan, Shard.WHOLE, "1.0");
    CampaignResult result = Shards.join(List.of(three, one, two));
    Path merged = folder.resolve("merged");
    try (ResultStore store = ResultStore.open(merged, result.about())) {
      store.end(result);
    }
    assertEquals(ResultFile.read(whole).orElseThrow().result(), result);
    assertArrayEquals(
        Files.readAllBytes(whole.resolve(ResultFile.NAME)),
        Files.readAllBytes(merged.resolve(ResultFile.NAME)));
  }

  @Test
  @DisplayName("a shard that is missing is named")
  void missing() {
    assertRefused("1 of 3 shards are missing: 2/3", one, three);
  }

  @Test
  @DisplayName("a shard that is there twice is named with both places")
  void twice() throws IOException, ResultFileException {
    Path again = SmallCampaign.leave(folder.resolve("again"), plan, new Shard(2, 3), "1.0");
    assertRefused(again + " holds shard 2/3, and so does " + two, one, two, again, three);
    assertRefused("holds shard 1/3, and so does", one, one, two, three);
  }

  @Test
  @DisplayName("a folder without results is named")
  void empty() {
    assertRefused("holds no results.tsv", one, folder.resolve("nowhere"));
  }

  @Test
  @DisplayName("a shard of another version, campaign or division is named with what differs")
  void foreign() throws IOException, ScenarioException, PlanException, ResultFileException {
    Path newer = SmallCampaign.leave(folder.resolve("newer"), plan, new Shard(2, 3), "2.0");
    assertRefused("was run by version 2.0, not by 1.0", one, newer, three);
    Path half = SmallCampaign.leave(folder.resolve("half"), plan, new Shard(2, 2), "1.0");
    assertRefused("it is shard 2/2, not 1/3", one, half);
    Path file = SmallCampaign.write(folder, SmallCampaign.CAMPAIGN.replace("seed: 9", "seed: 8"));
    Plan other = new Plan(CampaignReader.read(file));
    Path changed = SmallCampaign.leave(folder.resolve("changed"), other, new Shard(2, 3), "1.0");
    assertRefused("has changed since", one, changed, three);
  }

  @Test
  @DisplayName("a shard that is cut in half or has fewer cases is named with the way on")
  void incomplete() throws IOException {
    Path file = two.resolve(ResultFile.NAME);
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, bytes.length - 20));
    assertRefused("was cut short in line", one, two, three);
    String text = new String(bytes, StandardCharsets.UTF_8);
    Files.writeString(file, text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1));
    assertRefused("holds 17 of the 18 cases of shard 2/3; resume", one, two, three);
    Files.writeString(file, text.replace("case\t1\t", "case\t4\t"));
    assertRefused("is damaged in line", one, two, three);
  }

  private static void assertRefused(String why, Path... folders) {
    ResultFileException e =
        assertThrows(ResultFileException.class, () -> Shards.join(List.of(folders)));
    assertTrue(e.getMessage().contains(why), e.getMessage());
  }

  @Test
  @DisplayName("every case belongs to exactly one shard, whatever their number")
  void partition() {
    for (int count = 1; count <= 17; count++) {
      for (int cases : List.of(0, 1, 16, 17, 54)) {
        int sum = 0;
        for (int index = 1; index <= count; index++) {
          sum += new Shard(index, count).sizeOf(cases);
        }
        assertEquals(cases, sum, count + " shards");
      }
      int of = count;
      for (int number = 0; number < 40; number++) {
        int which = number;
        long owners =
            IntStream.rangeClosed(1, of).filter(index -> new Shard(index, of).has(which)).count();
        assertEquals(1, owners);
      }
    }
  }

  @Test
  @DisplayName("what names no shard is none")
  void texts() {
    assertEquals(Optional.of(new Shard(3, 16)), Shard.parse("3/16"));
    for (String text : List.of("0/4", "5/4", "3", "3/", "/4", "a/b", "1/0", "-1/4", "1/9999999")) {
      assertEquals(Optional.empty(), Shard.parse(text), text);
    }
  }
}
