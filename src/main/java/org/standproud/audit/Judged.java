package org.standproud.audit;

import org.jspecify.annotations.Nullable;

/**
 * An answer in brief.
 *
 * @param verdict the verdict in words
 * @param score 0 to 100
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
