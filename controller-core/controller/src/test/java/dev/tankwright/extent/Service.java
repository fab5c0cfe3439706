package dev.tankwright.extent;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A program that some tests start, and that a machine may lack. */
public enum Service {
  MOSQUITTO("mosquitto", "mosquitto") {
    @Override
    public boolean isPresent() {
      return program("mosquitto").isPresent() && program("mosquitto_passwd").isPresent();
    }
  },

  /** It comes with the build as a library, for Linux on x86-64; elsewhere Debian's is taken. */
  POSTGRESQL("PostgreSQL", "postgresql") {
    @Override
    public boolean isPresent() {
      return packedServer().isPresent() || installedServer().isPresent();
    }
  },

  CHROMIUM("chromium with chromedriver", "chromium chromium-driver") {
    @Override
    public boolean isPresent() {
      return program("chromium").isPresent() && program("chromedriver").isPresent();
    }
  },

  OPENSSL("openssl", "openssl") {
    @Override
    public boolean isPresent() {
      return program("openssl").isPresent();
    }
  };

  private static final Path DEBIAN_SERVERS = Path.of("/usr/lib/postgresql");

  private final String label;
  private final String packages;

  Service(String label, String packages) {
    this.label = label;
    this.packages = packages;
  }

  public abstract boolean isPresent();

  /** What is missing and what would help, in one line. */
  public String howToGet() {
    return label + " is not installed; on Debian: apt-get install " + packages;
  }

  /** Where a program of the search path lies. */
  public static Optional<Path> program(String name) {
    // Debian puts daemons into /usr/sbin, which an ordinary user's path may lack.
    String path = System.getenv("PATH") + File.pathSeparator + "/usr/sbin";
    return Arrays.stream(path.split(File.pathSeparator))
        .map(folder -> Path.of(folder, name))
        .filter(file -> Files.isRegularFile(file) && Files.isExecutable(file))
        .findFirst();
  }

  /** The name of the packed server for this machine on the class path, where there is one. */
  public static Optional<String> packedServer() {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    String machine = System.getProperty("os.arch").replace("amd64", "x86_64");
    String name = "postgres-" + system + "-" + machine + ".txz";
    boolean found = Service.class.getResource("/" + name) != null;
    return found ? Optional.of(name) : Optional.empty();
  }

  /** The folder with the programs of the newest server that Debian's packages have installed. */
  public static Optional<Path> installedServer() {
    if (!Files.isDirectory(DEBIAN_SERVERS)) {
      return Optional.empty();
    }
    try (Stream<Path> versions = Files.list(DEBIAN_SERVERS)) {
      return versions
          .map(version -> version.resolve("bin"))
          .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
          .filter(bin -> Files.isExecutable(bin.resolve("postgres")))
          .max(Comparator.naturalOrder());
    } catch (IOException e) {
      throw new UncheckedIOException(DEBIAN_SERVERS + " cannot be listed", e);
    }
  }
}
