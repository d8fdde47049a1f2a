package org.standproud.rules.language;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;
import org.standproud.setup.Worded;

/**
 * The truth of a condition over all draws of the joint sample. It extends the three values of FEEL
 * (OMG DMN: true, false, null) by one: the condition holds in some draws only.
 */
public enum Truth implements Worded {
  /** Holds in every draw. */
  TRUE,
  /** Holds in no draw. */
  FALSE,
  /** Holds in some draws and fails in others. */
  EITHER,
  /** Cannot be judged in some draws: a fact is missing, or the set-up lets go. */
  UNKNOWN;

  @JsonValue
  @Override
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  @Override
  public String toString() {
    return words();
  }
}
