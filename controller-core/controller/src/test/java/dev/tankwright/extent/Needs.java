package dev.tankwright.extent;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test that needs a program of the machine. Where that is missing the test is left out, and the
 * end of the build says so; with {@code -Dtankwright.trace=complete} it fails.
 */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
@ExtendWith(NeedsCondition.class)
public @interface Needs {
  /** What it needs, at least one. */
  Service[] value();
}
