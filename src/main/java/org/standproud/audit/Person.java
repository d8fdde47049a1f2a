package org.standproud.audit;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * Who decided something.
 *
 * @param name name, as the shop knows it
 * @param role what entitles to the decision, such as foreman
 * @param caller the caller through which it was told, who vouches for the name; null in records
 *     from before callers were told apart
 */
public record Person(
    String name, String role, @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String caller) {

  /** Refuses a decision that nobody answers for. */
  public Person {
    Words.required("name", name);
    Words.required("role", role);
    Words.optional("caller", caller);
  }

  /**
   * Somebody of whom it is not told through whom he spoke.
   *
   * @param name name, as the shop knows it
   * @param role what entitles to the decision
   */
  public Person(String name, String role) {
    this(name, role, null);
  }
}
