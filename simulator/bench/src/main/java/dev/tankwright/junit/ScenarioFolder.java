package dev.tankwright.junit;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ArgumentsSource;

/**
 * Makes a test method of one {@link ScenarioCase} one test for each scenario of a folder and of the
 * folders below it. A folder without a scenario is an error, so that no test passes by having
 * nothing to do.
 */
@Documented
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest(name = "{0}")
@ArgumentsSource(ScenarioArguments.class)
public @interface ScenarioFolder {
  /** The folder, from the folder in which the tests run: with Maven, that of the module. */
  String value();
}
