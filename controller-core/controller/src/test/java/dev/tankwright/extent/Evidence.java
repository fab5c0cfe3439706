package dev.tankwright.extent;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** A test of long evidence: it runs only under the profile {@code evidence}. */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
@ExtendWith(EvidenceCondition.class)
public @interface Evidence {
  /** What takes long, and which test of the ordinary build stands for it. */
  String value();
}
