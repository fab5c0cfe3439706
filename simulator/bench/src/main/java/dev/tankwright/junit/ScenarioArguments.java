package dev.tankwright.junit;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.AnnotationConsumer;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Gives a test method the scenarios of its folder, in the order of their names. */
final class ScenarioArguments implements ArgumentsProvider, AnnotationConsumer<ScenarioFolder> {
  private Path folder;

  @Override
  public void accept(ScenarioFolder annotation) {
    folder = Path.of(annotation.value());
  }

  @Override
  public Stream<? extends Arguments> provideArguments(
      ParameterDeclarations parameters, ExtensionContext context) {
    return ScenarioCases.in(folder).stream().map(Arguments::of);
  }
}
