package org.standproud.api.audit;

import io.swagger.v3.oas.annotations.media.Schema;
import java.security.Principal;
import org.standproud.api.problem.BadParameter;
import org.standproud.audit.Person;

/**
 * Who answers for a decision, as he is told.
 *
 * @param name name, as the shop knows it
 * @param role what entitles to the decision, such as foreman
 */
@Schema(name = "Signature")
public record Signature(String name, String role) {

  /** The same with the caller who told it, which nobody can tell of himself. */
  Person through(Principal caller) {
    try {
      return new Person(name, role, caller.getName());
    } catch (IllegalArgumentException e) {
      throw new BadParameter("by", String.valueOf(e.getMessage()));
    }
  }
}
