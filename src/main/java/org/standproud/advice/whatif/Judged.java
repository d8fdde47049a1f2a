package org.standproud.advice.whatif;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Adviser;
import org.standproud.advice.HoldReserve;
import org.standproud.advice.Score;
import org.standproud.advice.Verdict;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.RuleKinds;

/** The outcome of judging one set-up; reasons are computed on demand. Not thread-safe. */
public final class Judged {

  private final RuleBase ruleBase;
  private final Evidence evidence;
  private final RuleKinds kinds;
  private final List<CardKind> findings;
  private final HoldReserve reserve;
  private final double left;
  private @Nullable Verdict verdict;

  Judged(RuleBase ruleBase, Evidence evidence) {
    this.ruleBase = ruleBase;
    this.evidence = evidence;
    this.kinds = ruleBase.kinds(evidence);
    this.findings = kinds.findings();
    this.reserve = HoldReserve.of(evidence);
    this.left = Score.left(findings, reserve);
  }

  /** The facts. */
  public Evidence evidence() {
    return evidence;
  }

  /** The cards that fail or are open, in the order of their ids. */
  public List<CardKind> findings() {
    return findings;
  }

  /** The verdict. */
  public Verdict verdict() {
    Verdict known = verdict;
    if (known == null) {
      known = Adviser.verdict(ruleBase, kinds, evidence);
      verdict = known;
    }
    return known;
  }

  /** The score before rounding, between 0 and 1. */
  public double left() {
    return left;
  }

  /** The score as shown, 0 to 100. */
  public int score() {
    return Score.weighted(findings, reserve);
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

  /** Whether a stop fails or is open. */
  public boolean isStopped() {
    return findings.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
  }

  /** Whether it is no worse than another: no stop that the other lacks, and no lower score. */
  public boolean noWorseThan(Judged other) {
    return left >= other.left
        && other.stops().containsAll(stops())
        && (other.verdict() == Verdict.DO_NOT_RUN || verdict().compareTo(other.verdict()) <= 0);
  }

  private Set<String> ids(Severity severity) {
    Set<String> ids = new TreeSet<>();
    for (CardKind finding : findings) {
      if (finding.severity() == severity) {
        ids.add(finding.id());
      }
    }
    return ids;
  }
}
