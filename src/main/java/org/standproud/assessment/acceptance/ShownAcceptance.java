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
 * An acceptance as it is shown beside a finding. The finding keeps its kind and severity, and the
 * verdict stays.
 *
 * @param id its id
 * @param assessment the assessment whose finding was accepted
 * @param by who answers for it
 * @param reason why
 * @param given when it was given
 * @param expires until when
 * @param forJobOrder whether it covers later assessments of the same job order too
 * @param state whether it still covers the finding
 * @param because what made it stale or who took it back; empty while it is in force
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

  /** It covers the finding as it is. */
  public static final String IN_FORCE = "in force";

  /** It has expired, or the finding is no longer the one that was accepted. */
  public static final String STALE = "stale";

  /** It was taken back. */
  public static final String WITHDRAWN = "withdrawn";

  /** Copies the list. */
  public ShownAcceptance {
    because = List.copyOf(because);
  }

  /**
   * An acceptance beside the result of its card now.
   *
   * @param given the acceptance
   * @param withdrawal who withdrew it, null when no one did
   * @param now the result of the card now
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
