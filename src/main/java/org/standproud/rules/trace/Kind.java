package org.standproud.rules.trace;

import com.fasterxml.jackson.annotation.JsonValue;
import org.standproud.setup.Worded;

/** What a card came to, in the kinds of SARIF 2.1.0 (section 3.27.9). */
public enum Kind implements Worded {
  /** A flagging card holds in more of the draws than the level of its severity. */
  FAIL("fail"),
  /** A card does not hold, or in no more of the draws than that level. */
  PASS("pass"),
  /**
   * A card cannot be judged: a fact is missing that could make it speak, or the set-up lets go in
   * so many draws that what the card reads does not exist.
   */
  OPEN("open"),
  /** A card is not about this set-up. */
  NOT_APPLICABLE("notApplicable"),
  /** A card that only derives or eases holds in some draw. */
  INFORMATIONAL("informational");

  private final String code;

  Kind(String code) {
    this.code = code;
  }

  /** The SARIF code. */
  @JsonValue
  @Override
  public String words() {
    return code;
  }

  @Override
  public String toString() {
    return code;
  }
}
