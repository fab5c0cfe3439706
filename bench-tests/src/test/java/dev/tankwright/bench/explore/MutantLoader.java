package dev.tankwright.bench.explore;

import java.io.IOException;
import java.io.InputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Loads every class of the project anew, one of them with a mistake in it. */
final class MutantLoader extends ClassLoader {
  private static final String OURS = "dev.tankwright.";

  private final Mutation mutation;
  private int changes;

  /**
   * Makes a loader.
   *
   * @param mutation the mistake, or {@code null} for none
   */
  MutantLoader(Mutation mutation) {
    super(MutantLoader.class.getClassLoader());
    this.mutation = mutation;
  }

  /** How many places were changed so far. */
  int changes() {
    return changes;
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      if (!name.startsWith(OURS)) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? define(name) : loaded;
    }
  }

  private Class<?> define(String name) throws ClassNotFoundException {
    try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
      if (in == null) {
        throw new ClassNotFoundException(name);
      }
      byte[] code = in.readAllBytes();
      boolean hit = mutation != null && mutation.className().equals(name);
      byte[] used = hit ? mutated(code) : code;
      return defineClass(name, used, 0, used.length);
    } catch (IOException e) {
      throw new ClassNotFoundException(name, e);
    }
  }

  private byte[] mutated(byte[] code) {
    ClassReader reader = new ClassReader(code);
    // What is behind a jump that is never taken stays reachable on paper: frames need no anew.
    ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
    reader.accept(
        new ClassVisitor(Opcodes.ASM9, writer) {
          @Override
          public MethodVisitor visitMethod(
              int access, String name, String descriptor, String signature, String[] exceptions) {
            MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
            return name.equals(mutation.method())
                ? mutation.edit().over(next, () -> changes++)
                : next;
          }
        },
        0);
    return writer.toByteArray();
  }
}
