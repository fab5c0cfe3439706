package dev.tankwright.bench.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.bench.cli.Tool;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A run is recorded by the packaged command, and what was recorded is read again. */
@Timeout(300)
@Needs(Service.MOSQUITTO)
class RecordCommandTest {
  private static final String SCENARIO =
      Tool.root().resolve("bench-tests/scenarios/first-cycle.yaml").toString();

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  @TempDir private Path folder;

  private String uri;

  @BeforeEach
  void recordNothingYet() {
    uri = broker.uri().toString();
  }

  private Tool.Result tool(String... args) throws Exception {
    return Tool.run(folder, args);
  }

  private Tool.Result cycles(String... args) throws Exception {
    String[] all = new String[args.length + 3];
    System.arraycopy(args, 0, all, 1, args.length);
    all[0] = "cycles";
    all[args.length + 1] = "--db";
    all[args.length + 2] = "./f.db";
    return tool(all);
  }

  @Test
  @DisplayName("a run is recorded, listed, shown, verified and exported")
  void aRunIsRecordedListedShownVerifiedAndExported() throws Exception {
    assertEquals(
        0,
        Tool.runJar(folder, "record", "--broker", uri, "--db", "./f.db", "--until-idle", "1")
            .code());
    Tool.Result run = tool("run", SCENARIO, "--quiet", "--broker", uri, "--out", "./run");
    assertEquals(0, run.code(), run.err());
    Tool.Result record = tool("record", "--broker", uri, "--db", "./f.db", "--until-idle", "2");
    assertEquals(0, record.code(), record.err());
    List<String> events = Files.readAllLines(folder.resolve("run/events.ndjson"));
    assertTrue(
        record.out().contains("instrument-room-1  cycle/0001  MEDIUM  COMPLETED  AS_SET"),
        record.out());
    assertTrue(record.out().contains(events.size() + " new events, 0 duplicates"), record.out());
    assertEquals(
        "rw-------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("f.db"))));
    Tool.Result list = cycles("list");
    String row = "(?s).*instrument-room-1 +1 +MEDIUM +COMPLETED +AS_SET +2026-.*38 min 46 s.*";
    assertTrue(list.out().matches(row), list.out());
    Tool.Result show = cycles("show", "cycle/0001");
    assertEquals(0, show.code(), show.err());
    assertTrue(show.out().contains("\"interruptions\" : 1"), show.out());
    assertTrue(show.out().contains("dev.tankwright.cycle.completed.v1"), show.out());
    Tool.Result verify = cycles("verify");
    assertEquals(0, verify.code(), verify.out());
    assertTrue(verify.out().contains("complete and unaltered"), verify.out());
    assertEquals(0, cycles("export", "events", "--as", "ndjson", "--out", "./all.ndjson").code());
    assertEquals(events, Files.readAllLines(folder.resolve("all.ndjson")));
    Tool.Result records = cycles("export", "records");
    assertTrue(
        records.out().contains("\r\ninstrument-room-1,1,MEDIUM,2026-03-02T07:30:10.000Z,"),
        records.out());
    alterAndVerify();
  }

  private void alterAndVerify() throws Exception {
    try (RecordedRows rows = RecordedRows.of(folder.resolve("f.db"))) {
      rows.change("UPDATE cycle SET verdict = 'DEVIATING'");
      rows.change("UPDATE event SET time = '2026-03-02T07:30:11.000Z' WHERE sequence = 5");
    }
    Tool.Result verify = cycles("verify");
    assertEquals(1, verify.code(), verify.out());
    assertTrue(verify.out().contains("  ALTERED: time of event 5 is"), verify.out());
    assertTrue(verify.out().contains("  CYCLE: the row of cycle 1"), verify.out());
  }

  @Test
  @DisplayName("what cannot be right is refused in words")
  void whatCannotBeRightIsRefusedInWords() throws Exception {
    refused(
        2,
        "contains a password",
        "record",
        "--broker",
        uri,
        "--db",
        "jdbc:postgresql://h/d?password=sesame");
    refused(
        2,
        "contains a password",
        "record",
        "--broker",
        uri,
        "--db",
        "jdbc:postgresql://u:sesame@h/d");
    refused(
        2,
        "contains a password",
        "cycles",
        "list",
        "--db",
        "jdbc:postgresql://h/d?x=1&%50assword=sesame");
    refused(2, "not a PostgreSQL JDBC URL", "cycles", "list", "--db", "jdbc:other://h/d");
    refused(2, "name the broker", "record", "--db", "./f.db");
    refused(2, "there is no database", "cycles", "list", "--db", "./absent.db");
    refused(2, "folder that exists", "record", "--broker", uri, "--db", "./absent/f.db");
    refused(
        3,
        "check that the server is running",
        "cycles",
        "list",
        "--db",
        "jdbc:postgresql://127.0.0.1:1/d");
    Files.writeString(folder.resolve("rubbish.db"), "this is no database, and long enough for one");
    refused(2, "not an SQLite database", "record", "--broker", uri, "--db", "./rubbish.db");
    assertEquals(0, tool("run", SCENARIO, "--quiet", "--broker", uri, "--outbox", "./e.db").code());
    refused(2, "of another program", "record", "--broker", uri, "--db", "./e.db");
    assertFalse(Files.exists(folder.resolve("absent.db")));
  }

  private void refused(int code, String words, String... args) throws Exception {
    Tool.Result result = tool(args);
    assertEquals(code, result.code(), result.err());
    assertTrue(result.err().contains(words), result.err());
    assertFalse(result.err().contains("sesame"), result.err());
    assertEquals(1, result.errLines().size(), result.err());
  }

  @Test
  @DisplayName("a broker that is away is named and gives its exit code")
  void aBrokerThatIsAwayIsSaidAndGivesItsExitCode() throws Exception {
    String nowhere = "tcp://127.0.0.1:" + MosquittoBroker.freePort();
    Tool.Result result = tool("record", "--broker", nowhere, "--db", "./f.db", "--until-idle", "1");
    assertEquals(3, result.code());
    assertTrue(result.err().contains("connection refused"), result.err());
    assertEquals(1, result.errLines().size(), result.err());
  }
}
