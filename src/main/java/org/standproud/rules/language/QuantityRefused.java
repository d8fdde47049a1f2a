package org.standproud.rules.language;

import org.jspecify.annotations.Nullable;

/** A text that should have been a quantity and is none. */
public final class QuantityRefused extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final @Nullable String nearest;

  /**
   * Says what is wrong.
   *
   * @param reason why the text is no quantity, and how to write one
   * @param nearest the unit that was probably meant, or null
   */
  public QuantityRefused(String reason, @Nullable String nearest) {
    super(reason);
    this.nearest = nearest;
  }

  /** The unit that was probably meant, or null. */
  public @Nullable String nearest() {
    return nearest;
  }

  /**
   * The unit that was probably meant by a refused quantity.
   *
   * @param refusal any refusal of a reader of units
   */
  public static @Nullable String nearest(IllegalArgumentException refusal) {
    return refusal instanceof QuantityRefused refused ? refused.nearest : null;
  }
}
