package org.standproud.audit;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * A person who decides.
 *
 * @param name name, as the shop knows it
 * @param role the role that entitles the person to decide
 * @param caller the caller that sent it; absent in records from before callers were identified
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
   * A person without a known caller.
   *
   * @param name name, as the shop knows it
   * @param role the role that entitles the person to decide
   */
  public Person(String name, String role) {
    this(name, role, null);
  }
}
