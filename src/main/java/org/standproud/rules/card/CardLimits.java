package org.standproud.rules.card;

/** Size limits of cards; anything larger is refused before it is parsed. */
public final class CardLimits {

  /** Characters in one card. */
  public static final int MAX_CARD_LENGTH = 16_384;

  /** Levels of nesting. */
  public static final int MAX_DEPTH = 6;

  /** Values in one card, not counting keys. */
  public static final int MAX_VALUES = 600;

  /** Characters in one text. */
  public static final int MAX_TEXT_LENGTH = 2_000;

  /** Characters in one number, name or quantity. */
  public static final int MAX_NAME_LENGTH = 60;

  /** Conditions in one card. */
  public static final int MAX_CONDITIONS = 12;

  /** Limits in one card. */
  public static final int MAX_LIMITS = 16;

  /** Examples in one card. */
  public static final int MAX_EXAMPLES = 30;

  /** Errors reported for one card. */
  public static final int MAX_ERRORS = 20;

  /** Cards in one rule base. */
  public static final int MAX_CARDS = 2_000;

  private CardLimits() {}
}
