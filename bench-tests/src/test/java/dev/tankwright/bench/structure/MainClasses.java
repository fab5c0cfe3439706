package dev.tankwright.bench.structure;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The project's classes without those of its tests, read once. */
final class MainClasses {
  static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(place -> !place.contains("-tests.jar"))
          .importPackages("dev.tankwright");

  // A jar in a target folder or a repository, or the folder of classes of a module that has no jar.
  private static final Pattern PLACE =
      Pattern.compile(".*/(?:tankwright-([a-z]+)-[^/]+\\.jar!|([a-z]+)/target/classes)/.*");

  private MainClasses() {}

  /** The module that a class was compiled in, by the name of its folder. */
  static String module(JavaClass one) {
    String place = one.getSource().orElseThrow().getUri().toString();
    Matcher found = PLACE.matcher(place);
    if (!found.matches()) {
      throw new IllegalStateException("a class of no module: " + place);
    }
    return found.group(1) != null ? found.group(1) : found.group(2);
  }
}
