package dev.tankwright.cli;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CampaignRun;
import dev.tankwright.campaign.CaseException;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.ResultFileException;
import dev.tankwright.campaign.ResultStore;
import dev.tankwright.campaign.Shard;
import dev.tankwright.report.campaign.CampaignFolder;
import dev.tankwright.report.campaign.CampaignPages;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.text.CampaignText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import picocli.CommandLine;

/** One campaign from the first case to the files it leaves, with its progress on the console. */
final class CampaignSession {
  private final PrintWriter print;
  private final PrintWriter err;
  private final String file;
  private final Plan plan;
  private final LongSupplier nanoseconds;
  private final boolean quiet;

  /**
   * Makes a session.
   *
   * @param file the campaign's file as the command line named it
   */
  CampaignSession(
      CommandLine line, String file, Plan plan, LongSupplier nanoseconds, boolean quiet) {
    print = line.getOut();
    err = line.getErr();
    this.file = file;
    this.plan = plan;
    this.nanoseconds = nanoseconds;
    this.quiet = quiet;
  }

  /**
   * Runs a shard.
   *
   * @param out folder for the results; {@code null} for none
   * @return the exit code
   */
  int run(Path out, Shard shard, int threads, boolean resume) throws BadInputException {
    About about = plan.about(Version.text(), shard);
    try (ResultStore store = out == null ? ResultStore.none() : ResultStore.open(out, about)) {
      List<CaseResult> all = new ArrayList<>(store.begin(resume));
      store.remarks().forEach(remark -> err.println("tankwright: " + remark));
      int before = all.size();
      boolean stopped = run(store, shard, threads, all);
      CampaignResult result = CampaignResult.of(about, all);
      if (stopped && !result.isComplete()) {
        return stopped(out, result, all.size() - before);
      }
      store.end(result);
      if (out != null) {
        new CampaignFolder(out).write(result);
        CampaignPages.write(out, result, Optional.of(plan));
      }
      int code = result.allHeld() ? ExitCode.HELD : ExitCode.FAILED;
      if (!quiet || code != ExitCode.HELD) {
        print.print(CampaignText.of(result, file));
      }
      return code;
    } catch (ResultFileException e) {
      throw new BadInputException("tankwright: " + e.getMessage());
    } catch (IOException e) {
      throw new UnwritableException(
          "the results in "
              + out
              + " cannot be written ("
              + e
              + "); finished cases are kept: free some space or grant write access, and continue"
              + " with --resume",
          e);
    }
  }

  /** Runs the cases that are left; true if a signal has stopped it. */
  private boolean run(ResultStore store, Shard shard, int threads, List<CaseResult> all)
      throws IOException {
    CampaignRun run = new CampaignRun(plan, threads);
    boolean terminal = Terminal.isPresent();
    Progress line = new Progress(terminal && !quiet ? err : null);
    CampaignProgress progress =
        new CampaignProgress(
            line,
            terminal || quiet ? null : err,
            nanoseconds,
            shard.sizeOf(plan.cases()),
            all.size());
    try (Interruption interruption = new Interruption(run::stop)) {
      run.run(
          shard,
          List.copyOf(all),
          new CampaignRun.Listener() {
            @Override
            public void ended(CaseResult result) throws IOException {
              store.append(result);
              all.add(result);
            }

            @Override
            public void tick() {
              progress.tick(all.size());
            }
          });
      return interruption.isAsked();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    } catch (CaseException e) {
      err.println("tankwright: tankwright campaign " + file + " --replay " + e.number());
      throw new IllegalStateException(e.getMessage(), e);
    } finally {
      line.clear();
      if (!quiet) {
        err.println("campaign: " + progress.text(all.size()) + " after " + progress.took());
      }
    }
  }

  private int stopped(Path out, CampaignResult result, int news) {
    err.println(
        "tankwright: stopped after "
            + news
            + " cases; "
            + result.cases().size()
            + " of "
            + result.about().shard().sizeOf(plan.cases())
            + (out == null
                ? " were run; without --out nothing is kept"
                : " are kept in " + out + "; continue with --resume"));
    return ExitCode.STOPPED;
  }
}
