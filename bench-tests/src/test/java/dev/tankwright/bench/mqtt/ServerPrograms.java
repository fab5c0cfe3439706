package dev.tankwright.bench.mqtt;

import dev.tankwright.extent.Service;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.tukaani.xz.XZInputStream;

/**
 * The programs of PostgreSQL: those that come with the build as a library, so that every machine
 * tests with the same version and none lacks it; where there are none for a machine, those that are
 * installed. The library is unpacked once for a virtual machine and removed at its end.
 */
final class ServerPrograms implements AutoCloseable {
  private static final String READABLE = "rwxr-xr-x";

  private final Path unpacked;
  private final Path folder;

  private ServerPrograms(Path unpacked, Path folder) {
    this.unpacked = unpacked;
    this.folder = folder;
  }

  static ServerPrograms of(ExtensionContext context) {
    return context
        .getStore(StoreScope.LAUNCHER_SESSION, Namespace.create(ServerPrograms.class))
        .getOrComputeIfAbsent(
            ServerPrograms.class,
            any -> Service.packedServer().map(ServerPrograms::unpack).orElseGet(() -> installed()),
            ServerPrograms.class);
  }

  private static ServerPrograms installed() {
    return new ServerPrograms(null, Service.installedServer().orElseThrow());
  }

  private static ServerPrograms unpack(String name) {
    try {
      Path folder = Files.createTempDirectory("postgres-programs");
      // The account that runs the server is another one than the tests'.
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(READABLE));
      try (InputStream packed = Service.class.getResourceAsStream("/" + name);
          TarArchiveInputStream entries = new TarArchiveInputStream(new XZInputStream(packed))) {
        unpack(entries, folder);
      }
      return new ServerPrograms(folder, folder.resolve("bin"));
    } catch (IOException e) {
      throw new UncheckedIOException("PostgreSQL cannot be unpacked", e);
    }
  }

  private static void unpack(TarArchiveInputStream entries, Path folder) throws IOException {
    for (TarArchiveEntry one = entries.getNextEntry(); one != null; one = entries.getNextEntry()) {
      Path file = one.resolveIn(folder);
      if (one.isDirectory()) {
        Files.createDirectories(file);
      } else {
        Files.createDirectories(file.getParent());
        if (one.isSymbolicLink()) {
          Files.createSymbolicLink(file, Path.of(one.getLinkName()));
        } else {
          Files.copy(entries, file);
          Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(READABLE));
        }
      }
    }
  }

  /** Where initdb, pg_ctl and postgres lie. */
  Path folder() {
    return folder;
  }

  @Override
  public void close() throws IOException {
    if (unpacked != null) {
      try (Stream<Path> files = Files.walk(unpacked)) {
        files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
    }
  }
}
