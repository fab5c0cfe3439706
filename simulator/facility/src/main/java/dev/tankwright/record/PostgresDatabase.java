package dev.tankwright.record;

import dev.tankwright.events.mqtt.Credentials;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A database of a PostgreSQL server, by its JDBC URL. One recorder at a time has it, by an advisory
 * lock that ends with the connection. Beyond this machine the connection is encrypted and the
 * server's certificate verified, unless the URL says otherwise by {@code sslmode}.
 */
public final class PostgresDatabase implements Database {
  private static final String RIGHT =
      "; give jdbc:postgresql://host/database, optionally followed by ?currentSchema=NAME";
  private static final Pattern URL =
      Pattern.compile("jdbc:postgresql://([^/?#]+)/([^/?#]+)(?:\\?([^#]*))?");
  private static final Pattern LOOPBACK =
      Pattern.compile("(localhost|127\\.\\d{1,3}\\.\\d{1,3}\\.\\d{1,3}|\\[::1])(:\\d+)?");
  private static final Set<String> SECRETS = Set.of("password", "sslpassword");
  private static final int LOCK = 0x746b7772; // "tkwr" in ASCII

  private final String url;
  private final String name;
  private final Properties properties = new Properties();

  private PostgresDatabase(String url, String name) {
    this.url = url;
    this.name = name;
  }

  /** True for what is meant as a JDBC URL. */
  public static boolean isMeant(String text) {
    return text.toLowerCase(Locale.ROOT).startsWith("jdbc:");
  }

  /**
   * Reads a URL.
   *
   * @param user a user who needs no password, or has it elsewhere
   * @param credentials a user with a password, who goes before that one
   * @throws IllegalArgumentException if it is none of PostgreSQL or holds a password; the message
   *     does not repeat what may hold one
   */
  public static PostgresDatabase of(
      String url, Optional<String> user, Optional<Credentials> credentials) {
    Matcher parts = URL.matcher(url);
    if (!parts.matches()) {
      throw new IllegalArgumentException("this is not a PostgreSQL JDBC URL" + RIGHT);
    }
    List<String> names = parameters(parts.group(3));
    if (parts.group(1).contains("@") || names.stream().anyMatch(SECRETS::contains)) {
      throw new IllegalArgumentException(
          "the JDBC URL contains a password, which everyone on this machine could read; give it"
              + " with --db-password-file or TANKWRIGHT_DB_PASSWORD");
    }
    String place = "jdbc:postgresql://" + parts.group(1) + "/" + parts.group(2);
    PostgresDatabase database = new PostgresDatabase(url, "the database " + place);
    user.ifPresent(name -> database.properties.setProperty("user", name));
    database.set(parts.group(1), names, credentials);
    return database;
  }

  private static List<String> parameters(String query) {
    return query == null
        ? List.of()
        : Arrays.stream(query.split("&", -1))
            .map(one -> URLDecoder.decode(one.split("=", 2)[0], StandardCharsets.UTF_8))
            .map(name -> name.strip().toLowerCase(Locale.ROOT))
            .toList();
  }

  // What the URL says itself goes before these.
  private void set(String hosts, List<String> names, Optional<Credentials> credentials) {
    properties.setProperty("ApplicationName", "tankwright");
    properties.setProperty("connectTimeout", "10");
    properties.setProperty("socketTimeout", "60");
    properties.setProperty("tcpKeepAlive", "true");
    boolean near = Arrays.stream(hosts.split(",", -1)).allMatch(h -> LOOPBACK.matcher(h).matches());
    if (!near && !names.contains("sslmode")) {
      properties.setProperty("sslmode", "verify-full");
    }
    if (credentials.isPresent()) {
      properties.setProperty("user", credentials.get().user());
      properties.setProperty("password", new String(credentials.get().password()));
    }
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Sql write() throws SQLException, StoreException {
    Sql sql = connect();
    try {
      boolean alone =
          sql.first(
                  "SELECT pg_try_advisory_lock(?, hashtext(current_schema()))",
                  row -> row.getBoolean(1),
                  LOCK)
              .orElseThrow();
      if (!alone) {
        throw StoreException.failing(
            name + " is in use by another recorder; stop that one, or name another database", null);
      }
      if (sql.first("SHOW synchronous_commit", row -> row.getString(1)).orElse("").equals("off")) {
        sql.run("SET synchronous_commit = on"); // committed must mean that it outlives a crash
      }
      return sql;
    } catch (SQLException | StoreException e) {
      sql.close();
      throw e;
    }
  }

  @Override
  public Sql read() throws SQLException {
    Sql sql = connect();
    sql.connection().setReadOnly(true);
    return sql;
  }

  private Sql connect() throws SQLException {
    Connection connection = DriverManager.getConnection(url, properties);
    return new Sql(connection, () -> {});
  }

  @Override
  public String octets() {
    return "BYTEA";
  }

  @Override
  public void begin(Sql sql) throws SQLException {
    sql.connection().setAutoCommit(false);
  }

  @Override
  public void commit(Sql sql) throws SQLException {
    sql.connection().commit();
    sql.connection().setAutoCommit(true);
  }

  @Override
  public void rollback(Sql sql) throws SQLException {
    sql.connection().rollback();
    sql.connection().setAutoCommit(true);
  }

  /** The classes are those of SQLSTATE in PostgreSQL's manual, appendix A. */
  @Override
  public String advice(SQLException e) {
    String state = e.getSQLState() == null ? "" : e.getSQLState();
    return switch (state.length() < 2 ? "" : state.substring(0, 2)) {
      case "08" -> "check that the server is running and reachable from here";
      case "28" -> "check --db-user, its password and the server's pg_hba.conf";
      case "3D", "3F" -> "create the database first, as its owner: createdb NAME";
      case "42" ->
          "allow this user to create tables in the schema and to write to those of a recorder";
      case "53" -> "free some space on the server's disk, or a connection";
      case "55", "57" -> "the server is busy, starting or stopping; see its log";
      default -> "see the server's log";
    };
  }
}
