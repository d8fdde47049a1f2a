package org.standproud.advice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/**
 * A number from 0 to 100 for each thing that cards protect and for the whole. Each finding leaves a
 * share; the score is 100 times the product of the shares, rounded down. A product never rises when
 * a factor is added or falls: an added or graver finding never raises a score.
 *
 * @param whole the product over all findings
 * @param parts the product over the findings of each thing protected
 */
public record Score(int whole, Map<String, Integer> parts) {

  private static final Map<Severity, Double> LEFT_BY_FAIL =
      new EnumMap<>(Map.of(Severity.STOP, 0.30, Severity.CAUTION, 0.85, Severity.NOTE, 0.97));
  private static final Map<Severity, Double> LEFT_BY_OPEN =
      new EnumMap<>(Map.of(Severity.STOP, 0.50, Severity.CAUTION, 0.93, Severity.NOTE, 0.99));

  /** Copies the map, keeping its order. */
  public Score {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /** The score of the findings of a set-up. */
  static Score of(List<CardTrace> findings) {
    Map<String, Integer> parts = new LinkedHashMap<>();
    for (Protects protects : Protects.values()) {
      List<CardTrace> of = findings.stream().filter(f -> f.card().protects() == protects).toList();
      parts.put(protects.words(), product(of));
    }
    return new Score(product(findings), parts);
  }

  /** The share of the score that a finding leaves, between 0 and 1. */
  static double share(Kind kind, Severity severity) {
    Double share = (kind == Kind.OPEN ? LEFT_BY_OPEN : LEFT_BY_FAIL).get(severity);
    return share == null ? 0 : share;
  }

  private static int product(List<CardTrace> findings) {
    double product = 1;
    for (CardTrace finding : findings) {
      product *= share(finding.kind(), finding.severity());
    }
    return (int) Math.floor(100 * product);
  }
}
