package org.standproud.rules.trace;

import com.fasterxml.jackson.annotation.JsonValue;
import org.standproud.setup.Worded;

/** The outcome of a card, in the kinds of SARIF 2.1.0 (section 3.27.9). */
public enum Kind implements Worded {
  /** A flagging card holds in more of the draws than the level of its severity. */
  FAIL("fail"),
  /** A card does not hold, or in no more of the draws than that level. */
  PASS("pass"),
  /**
   * A card cannot be judged: a missing fact could make it fire, or the set-up lets go in so many
   * draws that the numbers it reads do not exist.
   */
  OPEN("open"),
  /** The card does not apply to this set-up. */
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

  /** Whether a flagging card of this outcome is a finding, unless another card silences it. */
  public boolean isFinding() {
    return this == FAIL || this == OPEN;
  }

  @Override
  public String toString() {
    return code;
  }
}
