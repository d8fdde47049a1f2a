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
 * Somebody about to answer for going on in spite of a finding, as typed.
 *
 * @param card the card whose finding it is
 * @param reason why
 * @param name who answers
 * @param role as what
 * @param expires last day of it
 * @param forJobOrder whether it speaks for later assessments of the same job order too
 */
public record AcceptanceForm(
    String card, String reason, String name, String role, String expires, boolean forJobOrder) {

  /** One that nobody has filled in yet. */
  static AcceptanceForm blank() {
    return new AcceptanceForm("", "", "", "", "", false);
  }

  /** Reads what was sent. */
  static AcceptanceForm of(Map<String, String> sent) {
    return new AcceptanceForm(
        sent.getOrDefault("card", ""),
        sent.getOrDefault("reason", "").strip(),
        sent.getOrDefault("name", "").strip(),
        sent.getOrDefault("role", "").strip(),
        sent.getOrDefault("expires", "").strip(),
        sent.containsKey("forJobOrder"));
  }

  /** What is wrong, by the name of the field; empty if nothing is. */
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

  /** What is asked for; only if nothing is wrong. */
  Acceptances.Asked asked() {
    return new Acceptances.Asked(
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
