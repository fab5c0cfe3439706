package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;

/**
 * A user name and a password for a broker or a database; never shown by {@link #toString}.
 * Immutable.
 *
 * <p>A password is read from a file or handed over from the environment; there is no way to give it
 * on a command line, where every process of the machine can read it.
 */
public final class Credentials {
  /** Most bytes of a password: what MQTT 3.1.1 can carry in a CONNECT (section 3.1.3.5). */
  private static final int LONGEST = 65_535;

  private static final Set<PosixFilePermission> OTHERS =
      Set.of(PosixFilePermission.OTHERS_READ, PosixFilePermission.OTHERS_WRITE);

  private final String user;
  private final String password;

  private Credentials(String user, String password) {
    this.user = user;
    this.password = password;
  }

  /**
   * From a name and a password that came from the environment.
   *
   * @throws IllegalArgumentException if one of them is empty
   */
  public static Credentials of(String user, String password) {
    if (user == null || user.isBlank()) {
      throw new IllegalArgumentException("there is a password but no user name; give both");
    }
    if (password == null || password.isEmpty() || password.length() > LONGEST) {
      throw new IllegalArgumentException(
          "the password of user '" + user + "' is empty or too long; give 1 to 65535 characters");
    }
    return new Credentials(user, password);
  }

  /**
   * With the password on the first line of a file that only its owner and group can read.
   *
   * @throws IOException if the file cannot be read, is open to everybody, or holds no password
   */
  public static Credentials fromFile(String user, Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IOException(
          "there is no password file " + file + "; create one that only you can read");
    }
    if (isOpenToOthers(file)) {
      throw new IOException(
          "the password file " + file + " is readable by others; run chmod 600 on it");
    }
    String text = Files.readString(file);
    String first = text.lines().findFirst().orElse("");
    if (first.isEmpty()) {
      throw new IOException("the first line of " + file + " is empty; it must be the password");
    }
    return of(user, first);
  }

  private static boolean isOpenToOthers(Path file) throws IOException {
    if (!file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      return false;
    }
    return Files.getPosixFilePermissions(file).stream().anyMatch(OTHERS::contains);
  }

  /** The user name. */
  public String user() {
    return user;
  }

  /** A copy of the password, for the library that logs in with it. */
  public char[] password() {
    return password.toCharArray();
  }

  @Override
  public String toString() {
    return "Credentials[" + user + ", password not shown]";
  }
}
