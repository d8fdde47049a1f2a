package org.standproud.assessment.acceptance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.Withdrawal;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.records.AcceptanceBook;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoredRecord;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.NotFoundException;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** Records acceptances of findings. No acceptance changes a verdict. */
@Component
public class Acceptances {

  private static final Clock CLOCK = Clock.systemUTC();

  private final Records records;
  private final AcceptanceBook book;
  private final CardOutcomes outcomes;

  Acceptances(Records records, AcceptanceBook book, CardOutcomes outcomes) {
    this.records = records;
    this.book = book;
    this.outcomes = outcomes;
  }

  /**
   * A finding that someone signs off.
   *
   * @param card id of the card whose finding is accepted
   * @param reason the reason
   * @param by the person who signs it off
   * @param expires expiry; at most 366 days ahead
   * @param forJobOrder whether it also covers later assessments of the same job order
   */
  @Schema(name = "AcceptanceRequest")
  public record AcceptanceRequest(
      String card, String reason, Signature by, Instant expires, boolean forJobOrder) {}

  /**
   * A request to withdraw an acceptance.
   *
   * @param reason the reason
   * @param by the person who withdraws it
   */
  @Schema(name = "WithdrawalRequest")
  public record WithdrawalRequest(String reason, Signature by) {}

  /**
   * A finding with its acceptances.
   *
   * @param card the card
   * @param kind its kind, as answered
   * @param severity its severity, as answered
   * @param acceptances its acceptances: in force, stale or withdrawn; may be empty
   */
  @Schema(name = "DecidedFinding")
  public record DecidedFinding(
      String card, String kind, String severity, List<ShownAcceptance> acceptances) {}

  /**
   * The acceptances of an assessment.
   *
   * @param assessment its id
   * @param verdict its verdict, which acceptances never change
   * @param findings every finding, accepted or not
   */
  public record Decisions(UUID assessment, String verdict, List<DecidedFinding> findings) {}

  /**
   * Records that a person accepts a finding and runs anyway.
   *
   * @param id the assessment
   * @param asked the finding and the person
   * @param caller the caller
   * @throws NotFoundException if there is no such assessment
   * @throws BadParameterException if it cannot be accepted
   */
  public ShownAcceptance accept(UUID id, AcceptanceRequest asked, Principal caller)
      throws InterruptedException {
    AuditRecord record = standing(id);
    refuseMasked(record, asked);
    RecordedFinding finding =
        record.findings().stream()
            .filter(f -> f.cardId().equals(asked.card()))
            .findFirst()
            .orElseThrow(
                () ->
                    new BadParameterException(
                        "card", "the assessment has no finding of this card"));
    CanonicalJson line = outcomes.outcomes(record).apply(asked.card());
    Acceptance given = acceptance(asked, asked.by().through(caller), record, finding, line);
    records.append(given);
    return ShownAcceptance.of(given, null, line, given.time());
  }

  /**
   * The acceptances of an assessment.
   *
   * @param id the assessment
   * @throws NotFoundException if there is no such assessment
   */
  public Decisions decisions(UUID id) {
    AuditRecord record = standing(id);
    List<AcceptanceBook.Decision> all = book.about(id, record.asked().jobOrder());
    // Without a decision there is nothing to compare the trace with.
    Function<String, CanonicalJson> lines = all.isEmpty() ? null : outcomes.outcomes(record);
    Instant now = CLOCK.instant();
    return new Decisions(
        id,
        record.judged().verdict(),
        record.findings().stream()
            .map(
                f ->
                    new DecidedFinding(
                        f.cardId(), f.kind(), f.severity(), shown(all, f.cardId(), lines, now)))
            .toList());
  }

  /**
   * Records the withdrawal of an acceptance.
   *
   * @param id the assessment
   * @param acceptance the acceptance
   * @param asked the person and the reason
   * @param caller the caller
   * @throws NotFoundException if the assessment has no such acceptance
   * @throws BadParameterException if it cannot be withdrawn
   */
  public void withdraw(UUID id, UUID acceptance, WithdrawalRequest asked, Principal caller)
      throws InterruptedException {
    if (book.find(acceptance).filter(a -> a.assessment().equals(id)).isEmpty()) {
      throw new NotFoundException("The assessment has no acceptance with this id.");
    }
    records.append(withdrawal(asked, asked.by().through(caller), acceptance));
  }

  /** A masked job order is no job order. */
  private static void refuseMasked(AuditRecord record, AcceptanceRequest asked) {
    if (asked.forJobOrder() && Mask.WITHHELD.equals(record.asked().jobOrder())) {
      throw new BadParameterException(
          "forJobOrder", "the job order of this assessment is withheld");
    }
  }

  private AuditRecord standing(UUID id) {
    StoredRecord stored =
        records
            .find(id)
            .orElseThrow(() -> new NotFoundException("No assessment has the id " + id + "."));
    if (stored.gone()) {
      throw new Refusal(RefusalKind.GONE, RefusalKind.GONE.meaning());
    }
    return stored.record();
  }

  private static Acceptance acceptance(
      AcceptanceRequest asked,
      Person by,
      AuditRecord record,
      RecordedFinding finding,
      CanonicalJson line) {
    try {
      return new Acceptance(
          AuditRecord.newId(),
          CLOCK.instant(),
          record.id(),
          record.asked().jobOrder(),
          finding.cardId(),
          finding.severity(),
          line,
          by,
          asked.reason(),
          asked.expires(),
          asked.forJobOrder());
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("body", String.valueOf(e.getMessage()));
    }
  }

  private static Withdrawal withdrawal(WithdrawalRequest asked, Person by, UUID acceptance) {
    try {
      return new Withdrawal(AuditRecord.newId(), CLOCK.instant(), acceptance, by, asked.reason());
    } catch (IllegalArgumentException e) {
      throw new BadParameterException("body", String.valueOf(e.getMessage()));
    }
  }

  private static List<ShownAcceptance> shown(
      List<AcceptanceBook.Decision> all,
      String card,
      @Nullable Function<String, CanonicalJson> lines,
      Instant now) {
    return lines == null
        ? List.of()
        : all.stream()
            .filter(d -> d.acceptance().card().equals(card))
            .map(d -> ShownAcceptance.of(d.acceptance(), d.withdrawal(), lines.apply(card), now))
            .toList();
  }
}
