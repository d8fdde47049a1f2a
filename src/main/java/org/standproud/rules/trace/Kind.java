package org.standproud.rules.trace;

/** What a card came to, in the kinds of SARIF 2.1.0 (section 3.27.9). */
public enum Kind {
  /** A flagging card holds or may hold. */
  FAIL("fail"),
  /** A card does not hold. */
  PASS("pass"),
  /** A card cannot be judged: a fact is missing. */
  OPEN("open"),
  /** A card is not about this set-up. */
  NOT_APPLICABLE("notApplicable"),
  /** A card that only derives or eases holds or may hold. */
  INFORMATIONAL("informational");

  private final String code;

  Kind(String code) {
    this.code = code;
  }

  /** The SARIF code. */
  public String code() {
    return code;
  }
}
