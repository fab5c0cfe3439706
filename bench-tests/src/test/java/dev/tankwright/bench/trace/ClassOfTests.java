package dev.tankwright.bench.trace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** What a compiled test class says of requirements, read without loading it. */
public final class ClassOfTests extends ClassVisitor {
  /** The modules of the reactor, in its order. */
  static final List<String> MODULES =
      List.of(
          "controller-core/controller",
          "controller-core/events",
          "controller-core/delivery",
          "simulator/bench",
          "simulator/facility",
          "simulator/cli",
          "bench-tests");

  // Its own tests hold samples, which show no requirement of the device.
  private static final Pattern TRACE_ITSELF =
      Pattern.compile("dev\\.tankwright\\.(bench\\.)?trace\\..*");
  private static final String REQUIREMENT = "Ldev/tankwright/trace/Requirement;";
  private static final String DISPLAY_NAME = "Lorg/junit/jupiter/api/DisplayName;";
  private static final String ASSERTIONS = "org/junit/jupiter/api/Assertions";

  private final List<DeclaredTest> tests = new ArrayList<>();
  private final List<String> displayNames = new ArrayList<>();
  private String className = "";
  private boolean assertsUncounted;

  private ClassOfTests() {
    super(Opcodes.ASM9);
  }

  /**
   * A test method with a requirement.
   *
   * @param requirements ids as the annotation has them
   * @param className full name of the class
   * @param method name of the method
   */
  public record DeclaredTest(List<String> requirements, String className, String method) {
    public DeclaredTest {
      requirements = List.copyOf(requirements);
    }

    String key() {
      return className + "#" + method;
    }

    /** The class's name without its package. */
    public String simpleClassName() {
      return className.substring(className.lastIndexOf('.') + 1);
    }
  }

  /**
   * Every class of the tests of every module but those of the trace itself; all must have been
   * compiled.
   */
  public static List<ClassOfTests> all(Path root) {
    List<ClassOfTests> found = new ArrayList<>();
    for (String module : MODULES) {
      Path folder = root.resolve(module).resolve("target").resolve("test-classes");
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
          ClassOfTests read = of(Files.readAllBytes(file));
          if (!TRACE_ITSELF.matcher(read.className).matches()) {
            found.add(read);
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException("The tests of " + module + " are not compiled", e);
      }
    }
    return found;
  }

  static ClassOfTests of(byte[] bytes) {
    ClassOfTests file = new ClassOfTests();
    new ClassReader(bytes).accept(file, ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
    return file;
  }

  String className() {
    return className;
  }

  /** Its test methods with a requirement. */
  public List<DeclaredTest> tests() {
    return List.copyOf(tests);
  }

  /** What its annotations call the class and its methods. */
  List<String> displayNames() {
    return List.copyOf(displayNames);
  }

  /** True when it calls an assertion of Jupiter itself, which nobody counts. */
  boolean assertsUncounted() {
    return assertsUncounted;
  }

  @Override
  public void visit(
      int version, int access, String name, String signature, String parent, String[] interfaces) {
    className = Type.getObjectType(name).getClassName();
  }

  @Override
  public AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
    return descriptor.equals(DISPLAY_NAME) ? new Texts(displayNames) : null;
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String descriptor, String signature, String[] exceptions) {
    return new Method(name);
  }

  private final class Method extends MethodVisitor {
    private final String name;
    private final List<String> requirements = new ArrayList<>();

    Method(String name) {
      super(Opcodes.ASM9);
      this.name = name;
    }

    @Override
    public AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
      return switch (descriptor) {
        case REQUIREMENT -> new Texts(requirements);
        case DISPLAY_NAME -> new Texts(displayNames);
        default -> null;
      };
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String method, String descriptor, boolean isInterface) {
      assertsUncounted |= owner.equals(ASSERTIONS);
    }

    @Override
    public void visitEnd() {
      if (!requirements.isEmpty()) {
        tests.add(new DeclaredTest(requirements, className, name));
      }
    }
  }

  /** Collects the text, or the texts, that an annotation holds. */
  private static final class Texts extends AnnotationVisitor {
    private final List<String> found;

    Texts(List<String> found) {
      super(Opcodes.ASM9);
      this.found = found;
    }

    @Override
    public void visit(String name, Object value) {
      found.add(value.toString());
    }

    @Override
    public AnnotationVisitor visitArray(String name) {
      return this;
    }
  }
}
