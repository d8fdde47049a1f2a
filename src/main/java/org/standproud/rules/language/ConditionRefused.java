package org.standproud.rules.language;

import org.jspecify.annotations.Nullable;

/** A condition that cannot be used, with the place, the reason and the way out. */
public final class ConditionRefused extends Exception {

  private static final long serialVersionUID = 1L;

  private final int line;
  private final int column;
  private final String fragment;
  private final @Nullable String nearest;
  private final String example;

  ConditionRefused(
      int line,
      int column,
      String fragment,
      String reason,
      @Nullable String nearest,
      String example) {
    super(reason);
    this.line = line;
    this.column = column;
    this.fragment = fragment;
    this.nearest = nearest;
    this.example = example;
  }

  /** Line within the condition, from 1. */
  public int line() {
    return line;
  }

  /** Column within the line, from 1. */
  public int column() {
    return column;
  }

  /** The part of the condition that is wrong. */
  public String fragment() {
    return fragment;
  }

  /** Why it is refused. */
  public String reason() {
    return String.valueOf(getMessage());
  }

  /** The known name that was probably meant, or null. */
  public @Nullable String nearest() {
    return nearest;
  }

  /** A condition that works in this card. */
  public String example() {
    return example;
  }
}
