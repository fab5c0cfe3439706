package dev.tankwright.events;

/**
 * What a facility's own systems call the operator and the load of a cycle: an id, a bar code, a set
 * number. Given together with a start; what is unknown is empty and then appears nowhere.
 *
 * @param operator who started the cycle, at most 128 characters
 * @param load what is in the basket, at most 128 characters
 */
public record LoadReference(String operator, String load) {
  /** Nothing is known. */
  public static final LoadReference NONE = new LoadReference("", "");

  /** Refuses text that cannot be sent. */
  public LoadReference {
    operator = Text.clean("the operator", operator);
    load = Text.clean("the load", load);
  }
}
