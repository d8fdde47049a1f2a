package org.standproud.rules.card;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import org.standproud.setup.Worded;

/** Severity of a finding, least first. */
public enum Severity implements Worded {
  /** Worth knowing (SARIF level note). */
  NOTE("note"),
  /** Run with care (SARIF level warning). */
  CAUTION("caution"),
  /** Do not run (SARIF level error). */
  STOP("stop");

  private final String words;

  Severity(String words) {
    this.words = words;
  }

  @JsonValue
  @Override
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return words();
  }

  /**
   * The one of a word.
   *
   * @param words its word in answers and records
   * @throws IllegalArgumentException if none has that word
   */
  public static Severity of(String words) {
    return Arrays.stream(values())
        .filter(one -> one.words().equals(words))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no severity " + words));
  }
}
