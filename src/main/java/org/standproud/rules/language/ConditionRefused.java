package org.standproud.rules.language;

import org.jspecify.annotations.Nullable;

/** An invalid condition, with position, reason and correction. */
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

  /** The wrong part of the condition. */
  public String fragment() {
    return fragment;
  }

  /** Why it is refused. */
  public String reason() {
    return String.valueOf(getMessage());
  }

  /** The known name probably meant, or null. */
  public @Nullable String nearest() {
    return nearest;
  }

  /** A working condition for this card. */
  public String example() {
    return example;
  }
}
