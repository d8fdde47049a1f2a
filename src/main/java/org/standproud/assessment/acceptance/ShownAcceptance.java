package org.standproud.assessment.acceptance;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Person;
import org.standproud.audit.Withdrawal;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * An acceptance shown beside a finding, which keeps its kind and severity; the verdict does not
 * change.
 *
 * @param id its id
 * @param assessment the assessment whose finding was accepted
 * @param by the person who signed it off
 * @param reason the reason
 * @param given time of the acceptance
 * @param expires expiry
 * @param forJobOrder whether it also covers later assessments of the same job order
 * @param state in force, stale (expired, or the card's finding has changed) or withdrawn
 * @param because why it is stale, or who withdrew it and why; empty while it is in force
 */
public record ShownAcceptance(
    UUID id,
    UUID assessment,
    Person by,
    String reason,
    Instant given,
    Instant expires,
    boolean forJobOrder,
    String state,
    List<String> because) {

  /** It covers the current finding. */
  public static final String IN_FORCE = "in force";

  /** It has expired, or the finding has changed since. */
  public static final String STALE = "stale";

  /** It was withdrawn. */
  public static final String WITHDRAWN = "withdrawn";

  /** Copies the list. */
  public ShownAcceptance {
    because = List.copyOf(because);
  }

  /**
   * An acceptance beside the current result of its card.
   *
   * @param given the acceptance
   * @param withdrawal its withdrawal, or null
   * @param now the current result of the card
   * @param time now
   */
  public static ShownAcceptance of(
      Acceptance given, @Nullable Withdrawal withdrawal, CanonicalJson now, Instant time) {
    if (withdrawal != null) {
      Person by = withdrawal.by();
      String who = by.name() + ", " + by.role() + ": " + withdrawal.reason();
      return shown(given, WITHDRAWN, List.of(who));
    }
    List<String> because = new ArrayList<>();
    if (!time.isBefore(given.expires())) {
      because.add("expired " + given.expires());
    }
    because.addAll(RecordedFindingComparison.changes(given.said(), now));
    return shown(given, because.isEmpty() ? IN_FORCE : STALE, because);
  }

  private static ShownAcceptance shown(Acceptance given, String state, List<String> because) {
    return new ShownAcceptance(
        given.id(),
        given.assessment(),
        given.by(),
        given.reason(),
        given.time(),
        given.expires(),
        given.forJobOrder(),
        state,
        because);
  }
}
