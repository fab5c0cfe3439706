package dev.tankwright.extent;

import static org.junit.platform.commons.support.AnnotationSupport.findAnnotation;

import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Leaves out what is marked as {@link Evidence} where it is not asked for. */
final class EvidenceCondition implements ExecutionCondition {
  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    Optional<Evidence> evidence = findAnnotation(context.getElement(), Evidence.class);
    if (evidence.isEmpty() || Extent.isWhole()) {
      return ConditionEvaluationResult.enabled("asked for");
    }
    return ConditionEvaluationResult.disabled(
        LeftOut.reason(LeftOut.Why.EVIDENCE, evidence.get().value()));
  }
}
