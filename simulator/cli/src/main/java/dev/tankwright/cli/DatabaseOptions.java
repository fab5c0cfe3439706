package dev.tankwright.cli;

import dev.tankwright.events.mqtt.Credentials;
import dev.tankwright.record.Database;
import dev.tankwright.record.PostgresDatabase;
import dev.tankwright.record.SqliteDatabase;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;

/** The options that say where recorded events are. No password is among them. */
final class DatabaseOptions {
  /** Holds the password of {@code --db-user} when there is no {@code --db-password-file}. */
  static final String PASSWORD = "TANKWRIGHT_DB_PASSWORD";

  @CommandLine.Option(
      names = "--db",
      required = true,
      paramLabel = "FILE|URL",
      description = "The database: an SQLite file, or a server as jdbc:postgresql://host/database.")
  private String database;

  @CommandLine.Option(
      names = "--db-user",
      paramLabel = "NAME",
      description =
          "User name on the server; its password comes from a file or from " + PASSWORD + ".")
  private String user;

  @CommandLine.Option(
      names = "--db-password-file",
      paramLabel = "FILE",
      description = "File with the password on its first line, readable by its owner only.")
  private Path passwordFile;

  /** The named database; nothing is opened yet. */
  Database database(Map<String, String> environment) throws BadInputException {
    try {
      if (PostgresDatabase.isMeant(database)) {
        return PostgresDatabase.of(
            database, Optional.ofNullable(user), credentials(environment.get(PASSWORD)));
      }
      if (user != null || passwordFile != null) {
        throw new IllegalArgumentException(
            "a user is given, but an SQLite file has no users; give"
                + " jdbc:postgresql://host/database");
      }
      return new SqliteDatabase(Path.of(database));
    } catch (InvalidPathException e) {
      throw new BadInputException("tankwright: --db: this is not a file path");
    } catch (IllegalArgumentException | IOException e) {
      throw new BadInputException("tankwright: --db: " + e.getMessage());
    }
  }

  private Optional<Credentials> credentials(String password) throws IOException {
    if (user == null) {
      if (passwordFile != null) {
        throw new IllegalArgumentException("a password file is given without --db-user");
      }
      return Optional.empty();
    }
    if (passwordFile == null && password == null) {
      return Optional.empty(); // the server may trust this user, or know it by its certificate
    }
    return Optional.of(
        passwordFile != null
            ? Credentials.fromFile(user, passwordFile)
            : Credentials.of(user, password));
  }
}
