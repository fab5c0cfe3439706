package dev.tankwright.bench.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** What the instructions of one method do. */
final class MethodFacts extends MethodVisitor {
  /** What the compiler throws where a switch over an enum names every constant. */
  private static final Set<String> COMPILERS_OWN =
      Set.of("java/lang/IncompatibleClassChangeError", "java/lang/MatchException");

  /** Every instruction of the virtual machine that touches float or double. */
  private static final Set<Integer> FLOATING_OPCODES =
      Set.of(
          Opcodes.FCONST_0,
          Opcodes.FCONST_1,
          Opcodes.FCONST_2,
          Opcodes.DCONST_0,
          Opcodes.DCONST_1,
          Opcodes.FLOAD,
          Opcodes.DLOAD,
          Opcodes.FSTORE,
          Opcodes.DSTORE,
          Opcodes.FALOAD,
          Opcodes.DALOAD,
          Opcodes.FASTORE,
          Opcodes.DASTORE,
          Opcodes.FADD,
          Opcodes.DADD,
          Opcodes.FSUB,
          Opcodes.DSUB,
          Opcodes.FMUL,
          Opcodes.DMUL,
          Opcodes.FDIV,
          Opcodes.DDIV,
          Opcodes.FREM,
          Opcodes.DREM,
          Opcodes.FNEG,
          Opcodes.DNEG,
          Opcodes.I2F,
          Opcodes.I2D,
          Opcodes.L2F,
          Opcodes.L2D,
          Opcodes.F2I,
          Opcodes.F2L,
          Opcodes.F2D,
          Opcodes.D2I,
          Opcodes.D2L,
          Opcodes.D2F,
          Opcodes.FCMPL,
          Opcodes.FCMPG,
          Opcodes.DCMPL,
          Opcodes.DCMPG,
          Opcodes.FRETURN,
          Opcodes.DRETURN);

  /** One call: whose method, which, and with what descriptor. */
  record Call(String owner, String name, String type) {
    String key() {
      return name + type;
    }

    boolean isCompilersOwn() {
      return COMPILERS_OWN.contains(owner);
    }
  }

  final String id;
  final List<String> floating = new ArrayList<>();
  final List<String> allocations = new ArrayList<>();
  final List<Call> calls = new ArrayList<>();

  MethodFacts(String id, String type) {
    super(Opcodes.ASM9);
    this.id = id;
    noteFloating(type, "descriptor " + type);
  }

  /** True when a descriptor speaks of float or double, alone, in arrays or among parameters. */
  static boolean isFloating(String type) {
    String primitives = type.replaceAll("L[^;]+;", "L");
    return primitives.indexOf('F') >= 0 || primitives.indexOf('D') >= 0;
  }

  private void noteFloating(String type, String what) {
    if (isFloating(type)) {
      floating.add(id + ": " + what);
    }
  }

  @Override
  public void visitInsn(int opcode) {
    noteOpcode(opcode);
  }

  @Override
  public void visitVarInsn(int opcode, int variable) {
    noteOpcode(opcode);
  }

  private void noteOpcode(int opcode) {
    if (FLOATING_OPCODES.contains(opcode)) {
      floating.add(id + ": opcode " + opcode);
    }
  }

  @Override
  public void visitLdcInsn(Object value) {
    if (value instanceof Float || value instanceof Double) {
      floating.add(id + ": constant " + value);
    }
  }

  @Override
  public void visitFieldInsn(int opcode, String owner, String field, String type) {
    noteFloating(type, owner + "." + field);
  }

  @Override
  public void visitMethodInsn(int opcode, String owner, String name, String type, boolean face) {
    noteFloating(type, "call of " + owner + "." + name + type);
    calls.add(new Call(owner, name, type));
  }

  @Override
  public void visitTypeInsn(int opcode, String type) {
    boolean makes = opcode == Opcodes.NEW || opcode == Opcodes.ANEWARRAY;
    if (makes && !COMPILERS_OWN.contains(type)) {
      allocations.add(id + ": new " + type);
    }
  }

  @Override
  public void visitIntInsn(int opcode, int operand) {
    if (opcode == Opcodes.NEWARRAY) {
      allocations.add(id + ": new array");
      if (operand == Opcodes.T_FLOAT || operand == Opcodes.T_DOUBLE) {
        floating.add(id + ": array of floating point");
      }
    }
  }

  @Override
  public void visitMultiANewArrayInsn(String type, int dimensions) {
    allocations.add(id + ": new " + type);
    noteFloating(type, "array " + type);
  }

  @Override
  public void visitInvokeDynamicInsn(String name, String type, Handle maker, Object... arguments) {
    allocations.add(id + ": lambda or joined string by " + maker.getName());
    noteFloating(type, "lambda " + type);
  }
}
