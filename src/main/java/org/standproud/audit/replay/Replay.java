package org.standproud.audit.replay;

import java.util.List;
import java.util.UUID;

/**
 * The result of a replay.
 *
 * @param record id of the assessment
 * @param ruleBase the revision that judged it
 * @param outcome whether the answer is the same, byte for byte; differs; or cannot be given
 * @param explanation the outcome in one sentence
 * @param versions versions that differ from the record
 * @param differences where the parts differ, in order of dependence: setup, facts, cards,
 *     judgements, answer
 * @param catalogueToday where today's catalogue would make another set-up of the request; the
 *     replay uses the recorded set-up
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
    /** It cannot be replayed. */
    NOT_POSSIBLE
  }

  /** Copies the lists. */
  public Replay {
    versions = List.copyOf(versions);
    differences = List.copyOf(differences);
    catalogueToday = List.copyOf(catalogueToday);
  }
}
