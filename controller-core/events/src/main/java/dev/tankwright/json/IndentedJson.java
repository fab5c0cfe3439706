package dev.tankwright.json;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;

/** JSON for people: a member or an element per line, indented by two, the same on every system. */
public final class IndentedJson {
  private IndentedJson() {}

  /** With a space on both sides of a colon. */
  public static DefaultPrettyPrinter printer() {
    return printer(Separators.createDefaultInstance());
  }

  /** With these separators. */
  public static DefaultPrettyPrinter printer(Separators separators) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    return printer;
  }
}
