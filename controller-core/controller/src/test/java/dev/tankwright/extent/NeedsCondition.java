package dev.tankwright.extent;

import static org.junit.platform.commons.support.AnnotationSupport.findAnnotation;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionConfigurationException;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Leaves out, or refuses, what {@link Needs} something that is not here. */
final class NeedsCondition implements ExecutionCondition {
  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    Optional<Service> missing =
        findAnnotation(context.getElement(), Needs.class).stream()
            .flatMap(needs -> Arrays.stream(needs.value()))
            .filter(service -> !service.isPresent())
            .findFirst();
    if (missing.isEmpty()) {
      return ConditionEvaluationResult.enabled("all that it needs is here");
    }
    if (Extent.isStrict()) {
      throw new ExtensionConfigurationException(missing.get().howToGet());
    }
    return ConditionEvaluationResult.disabled(
        LeftOut.reason(LeftOut.Why.SERVICE, missing.get().howToGet()));
  }
}
