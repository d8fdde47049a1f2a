package org.standproud.audit;

import org.jspecify.annotations.Nullable;

/**
 * What was answered, in short.
 *
 * @param verdict the verdict's words
 * @param score score from 0 to 100, null when the set-up was not judged
 */
public record Judged(String verdict, @Nullable Double score) {

  /** Refuses a score outside its scale. */
  public Judged {
    Words.required("verdict", verdict);
    if (score != null && !(score >= 0 && score <= 100)) {
      throw new IllegalArgumentException("score " + score + " is not within 0 to 100");
    }
  }
}
