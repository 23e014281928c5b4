// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.ObjectStreamClass;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Loads classes as a container does that keeps programs apart: first from its own jars, then from those around it. */
final class Container extends URLClassLoader {
  private Container(URL[] jars) {
    super(jars, Container.class.getClassLoader());
  }

  static Container of(List<Path> jars) throws MalformedURLException {
    List<URL> urls = new ArrayList<>();
    for (Path jar : jars) {
      urls.add(jar.toUri().toURL());
    }
    return new Container(urls.toArray(URL[]::new));
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      Class<?> type = findLoadedClass(name);
      if (type == null) {
        try {
          type = findClass(name);
        } catch (ClassNotFoundException e) {
          type = super.loadClass(name, false);
        }
      }
      if (resolve) {
        resolveClass(type);
      }
      return type;
    }
  }

  @Override
  public URL getResource(String name) {
    URL own = findResource(name);
    return own == null ? super.getResource(name) : own;
  }

  /** A fit computed by the classes of a loader. */
  static Object fit(ClassLoader loader, String text) throws ReflectiveOperationException {
    return loader.loadClass("holdfast.fits.Fit").getMethod("of", String.class).invoke(null, text);
  }

  /** The limits of size of its hole. */
  static String hole(Object fit) throws ReflectiveOperationException {
    Object hole = fit.getClass().getMethod("hole").invoke(fit);
    return hole.getClass().getMethod("limits").invoke(hole).toString();
  }

  static byte[] write(Object object) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(object);
    }
    return bytes.toByteArray();
  }

  static Object read(ClassLoader loader, byte[] bytes) throws IOException, ClassNotFoundException {
    try (ObjectInputStream in = new Stream(loader, new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }

  private static final class Stream extends ObjectInputStream {
    private final ClassLoader loader;

    Stream(ClassLoader loader, InputStream in) throws IOException {
      super(in);
      this.loader = loader;
    }

    @Override
    protected Class<?> resolveClass(ObjectStreamClass description) throws ClassNotFoundException {
      return Class.forName(description.getName(), false, loader);
    }
  }
}
