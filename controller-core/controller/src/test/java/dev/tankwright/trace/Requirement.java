package dev.tankwright.trace;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The safety requirements that a test method shows, by their ids in docs/safety.md. This is the
 * only place in which a test names them; the build joins what ran with that page.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Requirement {
  /** Ids as {@code SR-01}, at least one. */
  String[] value();
}
