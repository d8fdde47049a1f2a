package org.standproud.web.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.standproud.assessment.acceptance.Acceptances;
import org.standproud.assessment.acceptance.Signature;

/**
 * The sign-off form for a finding, as typed.
 *
 * @param card the card whose finding it is
 * @param reason the reason
 * @param name who signs off
 * @param role role of that person
 * @param expires last day of the acceptance
 * @param forJobOrder whether it also covers later assessments of the same job order
 */
public record AcceptanceForm(
    String card, String reason, String name, String role, String expires, boolean forJobOrder) {

  /** An empty form. */
  static AcceptanceForm blank() {
    return new AcceptanceForm("", "", "", "", "", false);
  }

  /** Reads the submitted form. */
  static AcceptanceForm of(Map<String, String> sent) {
    return new AcceptanceForm(
        sent.getOrDefault("card", ""),
        sent.getOrDefault("reason", "").strip(),
        sent.getOrDefault("name", "").strip(),
        sent.getOrDefault("role", "").strip(),
        sent.getOrDefault("expires", "").strip(),
        sent.containsKey("forJobOrder"));
  }

  /** Errors by the name of the field; may be empty. */
  Map<String, String> faults() {
    Map<String, String> faults = new LinkedHashMap<>();
    Map<String, String> words = new LinkedHashMap<>();
    words.put("reason", reason);
    words.put("name", name);
    words.put("role", role);
    words.forEach(
        (field, word) -> {
          if (word.isEmpty()) {
            faults.put(field, "Enter your " + field);
          }
        });
    if (end().isEmpty()) {
      faults.put("expires", "Enter a day such as 2026-12-31");
    }
    return faults;
  }

  /** The request for the service; only if there are no errors. */
  Acceptances.AcceptanceRequest asked() {
    return new Acceptances.AcceptanceRequest(
        card, reason, new Signature(name, role), end().orElseThrow(), forJobOrder);
  }

  /** The end of the last day, in UTC. */
  private Optional<Instant> end() {
    try {
      LocalDate last = LocalDate.parse(expires);
      return Optional.of(last.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant());
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
