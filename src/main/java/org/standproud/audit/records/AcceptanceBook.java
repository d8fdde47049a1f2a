package org.standproud.audit.records;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Acceptance;
import org.standproud.audit.RecordType;
import org.standproud.audit.Withdrawal;

/** What people decided about findings, looked up where it may speak for one. */
public final class AcceptanceBook {

  private final Records records;

  /**
   * The decisions among the records.
   *
   * @param records the records
   */
  public AcceptanceBook(Records records) {
    this.records = records;
  }

  /**
   * An acceptance with the record that took it back.
   *
   * @param acceptance the acceptance
   * @param withdrawal null when nobody took it back
   */
  public record Decision(Acceptance acceptance, @Nullable Withdrawal withdrawal) {}

  /**
   * One acceptance.
   *
   * @param id its id
   */
  public Optional<Acceptance> find(UUID id) {
    return records.findAny(id).filter(Acceptance.class::isInstance).map(Acceptance.class::cast);
  }

  /**
   * What speaks for an assessment that is made now: what was accepted for its job order and not
   * taken back. What has expired is among it, to be shown as stale.
   *
   * @param jobOrder its job order, null when it names none
   */
  public List<Acceptance> forNew(@Nullable String jobOrder) {
    return jobOrder == null
        ? List.of()
        : ofJobOrder(jobOrder).filter(a -> withdrawal(a).isEmpty()).toList();
  }

  /**
   * All that was decided about the findings of an assessment, taken back or not.
   *
   * @param assessment its id
   * @param jobOrder its job order, null when it names none
   */
  public List<Decision> about(UUID assessment, @Nullable String jobOrder) {
    Stream<Acceptance> own =
        records.about(RecordType.ACCEPTANCE, assessment).stream().map(Acceptance.class::cast);
    Stream<Acceptance> others =
        jobOrder == null
            ? Stream.of()
            : ofJobOrder(jobOrder).filter(a -> !a.assessment().equals(assessment));
    return Stream.concat(own, others)
        .map(a -> new Decision(a, withdrawal(a).orElse(null)))
        .toList();
  }

  private Stream<Acceptance> ofJobOrder(String jobOrder) {
    return records.ofJobOrder(RecordType.ACCEPTANCE, jobOrder).stream()
        .map(Acceptance.class::cast)
        .filter(Acceptance::forJobOrder);
  }

  private Optional<Withdrawal> withdrawal(Acceptance acceptance) {
    return records.about(RecordType.WITHDRAWAL, acceptance.id()).stream()
        .map(Withdrawal.class::cast)
        .findFirst();
  }
}
