package org.standproud.audit.replay;

import java.util.List;
import java.util.UUID;

/**
 * What came of giving an answer again.
 *
 * @param record id of the record
 * @param ruleBase the revision that judged
 * @param outcome whether it is the same answer
 * @param explanation in one sentence
 * @param versions versions that are not those of the record
 * @param differences where the parts differ, in the order in which one follows from the other:
 *     setup, evidence, trace, answer
 * @param catalogueToday where the request would be another set-up with the catalogue of today; the
 *     replay itself stands on the set-up as it was recorded
 */
public record Replay(
    UUID record,
    String ruleBase,
    Outcome outcome,
    String explanation,
    List<VersionDifference> versions,
    List<Difference> differences,
    List<Difference> catalogueToday) {

  /** Whether it is the same answer. */
  public enum Outcome {
    /** Byte for byte. */
    REPRODUCED,
    /** Another answer, or the same from other numbers. */
    DIFFERS,
    /** It cannot be given again. */
    NOT_POSSIBLE
  }

  /** Copies the lists. */
  public Replay {
    versions = List.copyOf(versions);
    differences = List.copyOf(differences);
    catalogueToday = List.copyOf(catalogueToday);
  }
}
