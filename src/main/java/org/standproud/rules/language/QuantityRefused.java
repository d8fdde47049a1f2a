package org.standproud.rules.language;

import org.jspecify.annotations.Nullable;

/** A text that is not a quantity. */
public final class QuantityRefused extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final @Nullable String nearest;

  /**
   * Creates the exception.
   *
   * @param reason why the text is not a quantity, and how to write one
   * @param nearest the unit probably meant, or null
   */
  public QuantityRefused(String reason, @Nullable String nearest) {
    super(reason);
    this.nearest = nearest;
  }

  /** The unit probably meant, or null. */
  public @Nullable String nearest() {
    return nearest;
  }

  /**
   * The unit probably meant by a refused quantity.
   *
   * @param refusal any exception of a unit reader
   */
  public static @Nullable String nearest(IllegalArgumentException refusal) {
    return refusal instanceof QuantityRefused refused ? refused.nearest : null;
  }
}
