package org.standproud.audit;

/**
 * Who decided something.
 *
 * @param name name, as the shop knows it
 * @param role what entitles to the decision, such as foreman
 */
public record Person(String name, String role) {

  /** Refuses a decision that nobody answers for. */
  public Person {
    Words.required("name", name);
    Words.required("role", role);
  }
}
