package dev.tankwright.events;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Recipe;
import java.util.Optional;

/** The set values of a cycle as a document: the temperature always, the rest where it is known. */
final class Setpoints {
  private Setpoints() {}

  static Document of(int setpointMilliC, Optional<Recipe> recipe) {
    Document.Builder document =
        Document.builder().thousandths("temperatureCelsius", setpointMilliC);
    recipe.ifPresent(
        known -> {
          document.thousandths("degassingSeconds", known.degasMs());
          document.thousandths("cleaningSeconds", known.cleanMs());
          if (!known.chemistry().equals(Chemistry.UNSTATED)) {
            document.document("chemistry", chemistry(known.chemistry()));
          }
        });
    return document.build();
  }

  private static Document chemistry(Chemistry chemistry) {
    Document.Builder document = Document.builder().flag("enzymatic", chemistry.enzymatic());
    if (chemistry.maximumMilliC() != Chemistry.NO_LIMIT) {
      document.thousandths("maximumCelsius", chemistry.maximumMilliC());
    }
    return document.build();
  }
}
