package org.standproud.advice.trial;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.standproud.advice.Adviser;
import org.standproud.advice.Score;
import org.standproud.advice.Verdict;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardTrace;

/**
 * A set-up with what the cards had to say of it.
 *
 * @param evidence its facts
 * @param findings the cards that flag or are open, in the order of their ids
 * @param verdict what to do with it
 * @param left the score before it is rounded, between 0 and 1
 */
public record Judged(Evidence evidence, List<CardTrace> findings, Verdict verdict, double left) {

  /** Copies the list. */
  public Judged {
    findings = List.copyOf(findings);
  }

  static Judged of(Evidence evidence, List<CardTrace> findings) {
    return new Judged(
        evidence, findings, Adviser.verdict(findings, evidence), Score.left(findings));
  }

  /** Ids of the stops, failed or open. */
  public Set<String> stops() {
    return ids(Severity.STOP);
  }

  /** Ids of the cautions, failed or open. */
  public Set<String> cautions() {
    return ids(Severity.CAUTION);
  }

  /** Ids of all findings. */
  public Set<String> ids() {
    Set<String> ids = new TreeSet<>();
    findings.forEach(finding -> ids.add(finding.id()));
    return ids;
  }

  /** Whether a stop stands against it or cannot be judged. */
  public boolean isStopped() {
    return findings.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
  }

  /** The score as it is told, 0 to 100. */
  public int score() {
    return Score.of(findings).whole();
  }

  /** Whether nothing is lost against another: no stop that it has not, and no lower score. */
  public boolean noWorseThan(Judged other) {
    return left >= other.left
        && verdict.compareTo(other.verdict) <= 0
        && other.stops().containsAll(stops());
  }

  private Set<String> ids(Severity severity) {
    Set<String> ids = new TreeSet<>();
    for (CardTrace finding : findings) {
      if (finding.severity() == severity) {
        ids.add(finding.id());
      }
    }
    return ids;
  }
}
