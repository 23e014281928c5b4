// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Loads the classes of the project anew, with a probe in each public method of the core. */
final class ProbingLoader extends ClassLoader {
  private static final String PROBE = Type.getInternalName(Probe.class);

  private final List<String> calculations = new ArrayList<>();

  ProbingLoader() {
    super("probing", ProbingLoader.class.getClassLoader());
  }

  /** The number of a calculation, by which the probe knows it; overloads share one. */
  synchronized int number(String calculation) {
    int number = calculations.indexOf(calculation);
    if (number < 0) {
      number = calculations.size();
      calculations.add(calculation);
      if (Probe.ran.length <= number) {
        Probe.ran = Arrays.copyOf(Probe.ran, 2 * number + 64);
      }
    }
    return number;
  }

  /** The calculations that ran since the probe was cleared. */
  synchronized Set<String> ran() {
    Set<String> ran = new TreeSet<>();
    for (int i = 0; i < calculations.size(); i++) {
      if (Probe.ran[i]) {
        ran.add(calculations.get(i));
      }
    }
    return ran;
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      if (known != null) {
        return known;
      }
      boolean ours = name.startsWith("holdfast.") && !name.equals(Probe.class.getName());
      return ours ? probed(name) : super.loadClass(name, resolve);
    }
  }

  private Class<?> probed(String name) throws ClassNotFoundException {
    try (InputStream stream = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
      if (stream == null) {
        throw new ClassNotFoundException(name);
      }
      byte[] bytes = stream.readAllBytes();
      if (!name.startsWith("holdfast.verification.") && !name.startsWith("holdfast.tables.")) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
        reader.accept(new Probing(writer, name), 0);
        bytes = writer.toByteArray();
      }
      return defineClass(name, bytes, 0, bytes.length);
    } catch (IOException e) {
      throw new ClassNotFoundException(name, e);
    }
  }

  /** Puts the probes in. */
  private final class Probing extends ClassVisitor {
    private final String owner;

    Probing(ClassVisitor next, String owner) {
      super(Opcodes.ASM9, next);
      this.owner = owner;
    }

    @Override
    public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
      MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
      boolean open = (access & Opcodes.ACC_PUBLIC) != 0 && (access & (Opcodes.ACC_SYNTHETIC | Opcodes.ACC_ABSTRACT)) == 0;
      // A class of constants runs when it is made; an object may be made and never asked.
      boolean probed = open ? !name.equals("<init>") : name.equals("<clinit>");
      return probed ? new Probed(next, number(owner.replace('$', '.') + "#" + name), descriptor, owner) : next;
    }
  }

  /** A method that tells that it runs and, if it is a kernel's, lets its result be falsified. */
  private static final class Probed extends MethodVisitor {
    private final int number;
    private final String descriptor;
    private final boolean kernel;

    Probed(MethodVisitor next, int number, String descriptor, String owner) {
      super(Opcodes.ASM9, next);
      this.number = number;
      this.descriptor = descriptor;
      this.kernel = owner.endsWith("Kernel");
    }

    @Override
    public void visitCode() {
      super.visitCode();
      super.visitLdcInsn(number);
      super.visitMethodInsn(Opcodes.INVOKESTATIC, PROBE, "enter", "(I)V", false);
      if (kernel && fillsWorkSpace()) {
        super.visitVarInsn(Opcodes.ALOAD, 0);
        super.visitLdcInsn(number);
        super.visitMethodInsn(Opcodes.INVOKESTATIC, PROBE, "enter", "(Ljava/lang/Object;I)V", false);
      }
    }

    /** A method without result whose first parameter is a work space of ours. */
    private boolean fillsWorkSpace() {
      return descriptor.matches("\\(Lholdfast/[^;]*Workspace;.*\\)V");
    }

    @Override
    public void visitInsn(int opcode) {
      if (kernel && opcode >= Opcodes.IRETURN && opcode <= Opcodes.RETURN) {
        String result = Type.getReturnType(descriptor).getDescriptor();
        if (result.matches("[DIZ]")) {
          leave("(" + result + "I)" + result);
        } else if (opcode == Opcodes.RETURN && fillsWorkSpace()) {
          super.visitVarInsn(Opcodes.ALOAD, 0);
          leave("(Ljava/lang/Object;I)V");
        } else if (opcode == Opcodes.RETURN && descriptor.contains("[D")) {
          super.visitVarInsn(Opcodes.ALOAD, lastArray());
          leave("([DI)V");
        }
      }
      super.visitInsn(opcode);
    }

    private void leave(String probe) {
      super.visitLdcInsn(number);
      super.visitMethodInsn(Opcodes.INVOKESTATIC, PROBE, "leave", probe, false);
    }

    /** The array that a kernel fills: the last one among its parameters. Kernels are static: the first is local variable 0. */
    private int lastArray() {
      Type[] parameters = Type.getArgumentTypes(descriptor);
      int place = 0;
      int last = 0;
      for (Type parameter : parameters) {
        if (parameter.getDescriptor().equals("[D")) {
          last = place;
        }
        place += parameter.getSize();
      }
      return last;
    }
  }
}
