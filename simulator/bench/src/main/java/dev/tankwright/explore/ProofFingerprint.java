package dev.tankwright.explore;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.rule.Rule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;

/**
 * Tells one controller, its rules, its worlds and its limits from another: a result holds for what
 * has the same fingerprint, and for nothing else. Made of the compiled classes without line numbers
 * and names of variables, so that a comment makes no difference; another compiler may give another
 * one.
 */
public final class ProofFingerprint {
  private static final int DIGITS = 16;
  private static final List<Class<?>> PACKAGES =
      List.of(CleanerController.class, Rule.class, Explorer.class);

  private ProofFingerprint() {}

  /**
   * The first 16 hexadecimal digits of the SHA-256, FIPS 180-4, of the classes that run in this
   * program and of the limits.
   *
   * @throws UncheckedIOException when the classes cannot be read
   */
  public static String of(DeviceProfile profile) {
    MessageDigest digest = sha256();
    try {
      for (Class<?> one : PACKAGES) {
        addPackage(one, digest);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own classes cannot be read: " + e, e);
    }
    for (Parameter parameter : Parameter.values()) {
      add(parameter.key() + "=" + profile.get(parameter), digest);
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
  }

  private static void addPackage(Class<?> one, MessageDigest digest) throws IOException {
    String name = one.getPackageName().replace('.', '/');
    Path place = place(one);
    if (Files.isDirectory(place)) {
      addClasses(place.resolve(name), digest);
      return;
    }
    try (FileSystem archive = FileSystems.newFileSystem(place)) {
      addClasses(archive.getPath(name), digest);
    }
  }

  private static Path place(Class<?> one) {
    try {
      return Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("a place of classes that is no place", e);
    }
  }

  private static void addClasses(Path folder, MessageDigest digest) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(folder)) {
      files = walk.filter(file -> file.toString().endsWith(".class")).sorted().toList();
    }
    for (Path file : files) {
      add(folder.relativize(file).toString(), digest);
      digest.update(withoutLineNumbers(Files.readAllBytes(file)));
    }
  }

  private static byte[] withoutLineNumbers(byte[] compiled) {
    ClassWriter writer = new ClassWriter(0);
    new ClassReader(compiled).accept(writer, ClassReader.SKIP_DEBUG);
    return writer.toByteArray();
  }

  private static void add(String text, MessageDigest digest) {
    digest.update(text.getBytes(StandardCharsets.UTF_8));
    // Ends the text, so that two never look like one.
    digest.update((byte) 0);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform must have SHA-256", e);
    }
  }
}
