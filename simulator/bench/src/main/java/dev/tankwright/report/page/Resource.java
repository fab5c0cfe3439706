package dev.tankwright.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Text files that travel with the program. */
public final class Resource {
  /** The path holds the version of the web jar: it is the one in the parent's build file. */
  private static final String UPLOT = "/META-INF/resources/webjars/uplot/1.6.30/";

  private Resource() {}

  /** One of this package's own files. */
  public static String own(String name) {
    return text("/dev/tankwright/report/" + name);
  }

  /** Several of this package's own files, one after the other. */
  public static String own(List<String> names) {
    StringBuilder out = new StringBuilder(1 << 15);
    for (String name : names) {
      out.append(own(name));
    }
    return out.toString();
  }

  /** One of uPlot's files. */
  static String uplot(String name) {
    return text(UPLOT + name);
  }

  private static String text(String path) {
    try (InputStream in = Resource.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException(path + " is not on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(path + " on the class path cannot be read", e);
    }
  }
}
