package org.standproud.audit.records;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Acceptance;
import org.standproud.audit.RecordType;
import org.standproud.audit.Withdrawal;

/** Looks up acceptances of findings. */
public final class AcceptanceBook {

  private final Records records;

  /**
   * Creates the lookup.
   *
   * @param records the records
   */
  public AcceptanceBook(Records records) {
    this.records = records;
  }

  /**
   * An acceptance with its withdrawal.
   *
   * @param acceptance the acceptance
   * @param withdrawal null if it was not withdrawn
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
   * The acceptances that apply to a new assessment: those for its job order that were not
   * withdrawn. Expired ones are included, to be shown as stale.
   *
   * @param jobOrder its job order, or null
   */
  public List<Acceptance> forNew(@Nullable String jobOrder) {
    return jobOrder == null
        ? List.of()
        : ofJobOrder(jobOrder).filter(a -> withdrawal(a).isEmpty()).toList();
  }

  /**
   * All acceptances of the findings of an assessment, withdrawn or not.
   *
   * @param assessment its id
   * @param jobOrder its job order, or null
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
