package org.standproud.assessment.acceptance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.security.Principal;
import org.standproud.audit.Person;
import org.standproud.refusal.BadParameterException;

/**
 * Who answers for a decision, as given in the request.
 *
 * @param name name, as the shop knows it
 * @param role what entitles to the decision, such as foreman
 */
@Schema(name = "Signature")
public record Signature(String name, String role) {

  /** The same with the caller, which is taken from the credentials and not from the request. */
  public Person through(Principal caller) {
    try {
      return new Person(name, role, caller.getName());
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("by", String.valueOf(e.getMessage()));
    }
  }
}
