package org.standproud.assessment.acceptance;

import java.util.function.Function;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.canonical.CanonicalJson;

/** Finds the outcome of a card in a record. */
@FunctionalInterface
public interface CardOutcomes {

  /**
   * The outcomes of a record.
   *
   * @param record a record with its payload
   * @return the trace line of a card by its id; it throws an exception for a card that the record
   *     does not have
   */
  Function<String, CanonicalJson> outcomes(AuditRecord record);
}
