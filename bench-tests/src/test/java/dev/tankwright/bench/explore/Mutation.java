package dev.tankwright.bench.explore;

import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * A mistake that is put into one method of the controller on purpose.
 *
 * @param name what is wrong, in words
 * @param type simple path below {@code dev/tankwright/controller/}
 * @param method the method's name
 * @param edit how the method is changed
 */
record Mutation(String name, String type, String method, Edit edit) {
  /** Changes a method's instructions and counts what it has changed. */
  @FunctionalInterface
  interface Edit {
    MethodVisitor over(MethodVisitor next, Runnable changed);
  }

  String className() {
    return "dev.tankwright.controller." + type.replace('/', '.');
  }

  /** Every return of a truth value becomes the given one. */
  static Edit answers(boolean value) {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          @Override
          public void visitInsn(int opcode) {
            if (opcode == Opcodes.IRETURN) {
              super.visitInsn(Opcodes.POP);
              super.visitInsn(value ? Opcodes.ICONST_1 : Opcodes.ICONST_0);
              changed.run();
            }
            super.visitInsn(opcode);
          }
        };
  }

  /** What a call of the given method answers counts as the given truth value. */
  static Edit takesAnswerFor(String owner, String called, boolean value) {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          @Override
          public void visitMethodInsn(
              int opcode, String of, String name, String descriptor, boolean isInterface) {
            super.visitMethodInsn(opcode, of, name, descriptor, isInterface);
            if (of.endsWith("/" + owner) && name.equals(called) && descriptor.endsWith(")Z")) {
              changed.run();
              super.visitInsn(Opcodes.POP);
              super.visitInsn(value ? Opcodes.ICONST_1 : Opcodes.ICONST_0);
            }
          }
        };
  }

  /** Every return of an object becomes one of nothing. */
  static Edit answersNothing() {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          @Override
          public void visitInsn(int opcode) {
            if (opcode == Opcodes.ARETURN) {
              super.visitInsn(Opcodes.POP);
              super.visitInsn(Opcodes.ACONST_NULL);
              changed.run();
            }
            super.visitInsn(opcode);
          }
        };
  }

  /** An instruction without operands becomes another. */
  static Edit swaps(int from, int to) {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          @Override
          public void visitInsn(int opcode) {
            if (opcode == from) {
              changed.run();
            }
            super.visitInsn(opcode == from ? to : opcode);
          }
        };
  }

  /** A jump of the given kind is never taken. */
  static Edit neverJumps(int jump, boolean twoOperands) {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          @Override
          public void visitJumpInsn(int opcode, org.objectweb.asm.Label label) {
            if (opcode == jump) {
              changed.run();
              super.visitInsn(twoOperands ? Opcodes.POP2 : Opcodes.POP);
            } else {
              super.visitJumpInsn(opcode, label);
            }
          }
        };
  }

  /** The method does nothing. */
  static Edit doesNothing() {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          @Override
          public void visitCode() {
            super.visitCode();
            changed.run();
            super.visitInsn(Opcodes.ICONST_0);
            org.objectweb.asm.Label rest = new org.objectweb.asm.Label();
            super.visitJumpInsn(Opcodes.IFNE, rest);
            super.visitInsn(Opcodes.RETURN);
            super.visitLabel(rest);
            super.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
          }
        };
  }

  /** The line of the table with that phase and trigger leads to another phase. */
  static Edit leadsTo(String from, String trigger, String to) {
    return (next, changed) ->
        new MethodVisitor(Opcodes.ASM9, next) {
          private String phase = "";
          private String seen = "";

          @Override
          public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
            boolean isPhase = owner.endsWith("/Phase");
            String field = name;
            if (isPhase && seen.equals(trigger) && phase.equals(from)) {
              field = to;
              changed.run();
            }
            phase = isPhase ? name : phase;
            seen = owner.endsWith("/Trigger") ? name : "";
            super.visitFieldInsn(opcode, owner, field, descriptor);
          }
        };
  }
}
