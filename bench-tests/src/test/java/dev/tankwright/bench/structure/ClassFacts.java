package dev.tankwright.bench.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** What a compiled class says of itself, as far as firmware cares. */
final class ClassFacts extends ClassVisitor {
  final List<String> parents = new ArrayList<>();
  final Map<String, MethodFacts> methods = new TreeMap<>();
  final List<String> floatingFields = new ArrayList<>();
  String name;

  private ClassFacts() {
    super(Opcodes.ASM9);
  }

  static ClassFacts read(byte[] bytes) {
    ClassFacts facts = new ClassFacts();
    new ClassReader(bytes).accept(facts, ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
    return facts;
  }

  @Override
  public void visit(
      int version, int access, String self, String signature, String parent, String[] faces) {
    name = self;
    parents.add(parent);
    parents.addAll(List.of(faces));
  }

  @Override
  public FieldVisitor visitField(int access, String field, String type, String sig, Object value) {
    if (MethodFacts.isFloating(type)) {
      floatingFields.add(name + "." + field);
    }
    return null;
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String method, String type, String signature, String[] exceptions) {
    MethodFacts facts = new MethodFacts(name + "." + method + type, type);
    methods.put(method + type, facts);
    return facts;
  }
}
