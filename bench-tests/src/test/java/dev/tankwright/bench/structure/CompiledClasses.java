package dev.tankwright.bench.structure;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Compiled classes as they lie on the class path, in a directory or in a jar. */
final class CompiledClasses {
  private CompiledClasses() {}

  /** Every class in the package of the given one and below, from where that one was loaded. */
  static List<ClassFacts> around(Class<?> anchor) throws IOException, URISyntaxException {
    URI place = anchor.getProtectionDomain().getCodeSource().getLocation().toURI();
    String folder = anchor.getPackageName().replace('.', '/');
    if (Files.isDirectory(Path.of(place))) {
      return below(Path.of(place).resolve(folder));
    }
    try (FileSystem jar = FileSystems.newFileSystem(Path.of(place))) {
      return below(jar.getPath(folder));
    }
  }

  /** One class of the tests. */
  static ClassFacts of(Class<?> type) throws IOException {
    String name = "/" + type.getName().replace('.', '/') + ".class";
    try (var in = type.getResourceAsStream(name)) {
      return ClassFacts.read(in.readAllBytes());
    }
  }

  private static List<ClassFacts> below(Path folder) throws IOException {
    List<ClassFacts> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
        found.add(ClassFacts.read(Files.readAllBytes(file)));
      }
    }
    return found;
  }
}
