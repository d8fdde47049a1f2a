package org.standproud.assessment.acceptance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.security.Principal;
import org.standproud.audit.Person;
import org.standproud.refusal.BadParameterException;

/**
 * A person who signs off a decision.
 *
 * @param name name, as the shop knows it
 * @param role the role that entitles the person to decide, such as foreman
 */
@Schema(name = "Signature")
public record Signature(String name, String role) {

  /** Adds the caller, which comes from the credentials and not from the request. */
  public Person through(Principal caller) {
    try {
      return new Person(name, role, caller.getName());
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("by", String.valueOf(e.getMessage()));
    }
  }
}
