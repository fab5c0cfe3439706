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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultFileTest {
  @TempDir private Path folder;
  private Plan plan;
  private Path out;
  private Path file;
  private byte[] whole;

  @BeforeEach
  void leaveResults() throws IOException, ScenarioException, PlanException, ResultFileException {
    plan = SmallCampaign.plan(folder);
    out = SmallCampaign.leave(folder.resolve("out"), plan, Shard.WHOLE, "1.0");
    file = out.resolve(ResultFile.NAME);
    whole = Files.readAllBytes(file);
  }

  @Test
  @DisplayName("what was written is read again, to the last bit")
  void roundTrip() throws ResultFileException {
    ResultFile found = ResultFile.read(out).orElseThrow();
    assertEquals(SmallCampaign.run(plan, Shard.WHOLE), found.cases());
    assertEquals(plan.about("1.0", Shard.WHOLE), found.about());
    assertEquals(List.of(), found.discarded());
    assertTrue(found.result().isComplete());
  }

  @Test
  @DisplayName(
      "wherever the file is cut, every whole line before the cut is kept and none invented")
  void cutAnywhere() throws IOException, ResultFileException {
    int head = headLength();
    List<CaseResult> all = ResultFile.read(out).orElseThrow().cases();
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 300; i++) {
      int length = random.nextInt(head, whole.length);
      byte[] rest = Arrays.copyOf(whole, length);
      Files.write(file, rest);
      int lines = lines(rest) - lines(Arrays.copyOf(whole, head));
      ResultFile found = ResultFile.read(out).orElseThrow();
      assertEquals(all.subList(0, lines), found.cases(), "cut after " + length + " bytes");
      assertEquals(rest[length - 1] != '\n', found.cut());
    }
  }

  private int headLength() {
    String text = new String(whole, StandardCharsets.UTF_8);
    String head = text.substring(0, text.indexOf('\n', text.indexOf("begin\t")) + 1);
    return head.getBytes(StandardCharsets.UTF_8).length;
  }

  private static int lines(byte[] bytes) {
    int lines = 0;
    for (byte octet : bytes) {
      lines += octet == '\n' ? 1 : 0;
    }
    return lines;
  }

  @Test
  @DisplayName("a head that is cut is no result file")
  void cutInHead() throws IOException {
    Files.write(file, Arrays.copyOf(whole, headLength() / 2));
    assertRefused("not a campaign's result file, or its header is damaged");
    Files.write(file, new byte[0]);
    assertRefused("not a campaign's result file, or its header is damaged");
    Files.writeString(file, "case,fault\n1,2\n");
    assertRefused("not a campaign's result file, or its header is damaged");
  }

  private void assertRefused(String why) {
    ResultFileException e =
        assertThrows(ResultFileException.class, () -> ResultFile.read(out).orElseThrow());
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().contains(file.toString()), e.getMessage());
  }

  @Test
  @DisplayName("a changed octet in any line is found, told and the case run again: same bytes")
  void damagedLine() throws IOException, ResultFileException {
    SplittableRandom random = new SplittableRandom(6);
    for (int i = 0; i < 100; i++) {
      byte[] damaged = whole.clone();
      int at = random.nextInt(headLength(), whole.length - 1);
      damaged[at] ^= (byte) (1 << random.nextInt(0, 7));
      Files.write(file, damaged);
      assertTrue(ResultFile.read(out).orElseThrow().discarded().size() >= 1, "octet " + at);
      List<String> remarks = resume();
      assertTrue(remarks.get(0).contains("discarded"), remarks.toString());
      assertArrayEquals(whole, Files.readAllBytes(file), "octet " + at);
    }
  }

  /** Goes on as the command does; gives what a person is told. */
  private List<String> resume() throws IOException, ResultFileException {
    About about = plan.about("1.0", Shard.WHOLE);
    try (ResultStore store = ResultStore.open(out, about)) {
      List<CaseResult> all = new ArrayList<>(store.begin(true));
      List<Integer> known = all.stream().map(CaseResult::number).toList();
      for (int number = 0; number < plan.cases(); number++) {
        if (!known.contains(number)) {
          CaseResult result = plan.run(number);
          store.append(result);
          all.add(result);
        }
      }
      store.end(CampaignResult.of(about, all));
      return store.remarks();
    }
  }

  @Test
  @DisplayName("lines that stand twice count once; two that differ are refused")
  void doubled() throws IOException, ResultFileException {
    String text = new String(whole, StandardCharsets.UTF_8);
    List<String> lines = text.lines().toList();
    String last = lines.get(lines.size() - 1);
    Files.writeString(file, text + last + "\n");
    ResultFile found = ResultFile.read(out).orElseThrow();
    assertEquals(1, found.doubled());
    assertEquals(plan.cases(), found.cases().size());
    List<String> fields = new ArrayList<>(ResultLine.fields(last).orElseThrow());
    fields.set(5, "77");
    Files.writeString(file, text + ResultLine.of(fields));
    assertRefused("two results of case");
  }

  @Test
  @DisplayName("results are resumed only where they belong, and never by mistake")
  void foreign() throws IOException, ScenarioException, PlanException {
    assertBegin(plan.about("1.0", Shard.WHOLE), false, "holds 54 results already");
    assertBegin(plan.about("1.1", Shard.WHOLE), true, "run by version 1.0, not by 1.1");
    assertBegin(plan.about("1.0", new Shard(2, 3)), true, "it is shard 1/1, not 2/3");
    Path other = SmallCampaign.write(folder, SmallCampaign.CAMPAIGN.replace("seed: 9", "seed: 8"));
    Plan changed = new Plan(CampaignReader.read(other));
    assertBegin(changed.about("1.0", Shard.WHOLE), true, "has changed since");
    assertArrayEquals(whole, Files.readAllBytes(file), "nothing was touched");
  }

  private void assertBegin(About about, boolean resume, String why) throws IOException {
    ResultFileException e =
        assertThrows(
            ResultFileException.class,
            () -> {
              try (ResultStore store = ResultStore.open(out, about)) {
                store.begin(resume);
              }
            });
    assertTrue(e.getMessage().contains(why), e.getMessage());
  }

  @Test
  @DisplayName("one folder cannot be written by two runs at once")
  void held() throws IOException, ResultFileException {
    About about = plan.about("1.0", Shard.WHOLE);
    try (ResultStore store = ResultStore.open(out, about)) {
      ResultFileException e =
          assertThrows(ResultFileException.class, () -> ResultStore.open(out, about));
      assertTrue(e.getMessage().contains("is being written by another run"), e.getMessage());
      assertEquals(54, store.begin(true).size());
    }
  }
}
