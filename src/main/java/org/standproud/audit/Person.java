package org.standproud.audit;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * Who decided something.
 *
 * @param name name, as the shop knows it
 * @param role what entitles to the decision, such as foreman
 * @param caller the caller that sent it and vouches for the name; null in records from before
 *     callers were recorded
 */
public record Person(
    String name, String role, @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String caller) {

  /** Refuses a decision without a name and a role. */
  public Person {
    Words.required("name", name);
    Words.required("role", role);
    Words.optional("caller", caller);
  }

  /**
   * A person whose caller is not known.
   *
   * @param name name, as the shop knows it
   * @param role what entitles to the decision
   */
  public Person(String name, String role) {
    this(name, role, null);
  }
}
