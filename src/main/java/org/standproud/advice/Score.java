package org.standproud.advice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardOutcome;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/**
 * A score from 0 to 100 for each thing that cards protect and for the whole. Each finding has a
 * factor s; the most severe counts in full, the second by half, the third by a third and so on,
 * because many cards may have one cause: score = 100 prod s_i^(1/i), rounded, s_1 least. A note
 * costs little: between two set-ups that may both run it marks the better practice. A card that
 * fails in a share of the draws costs between an open card and one that fails in all draws. An
 * added or more severe finding never raises the score: it lowers its own factor by at least as much
 * as it lifts the others. {@link HoldReserve} is a factor of the whole and of holding, so that two
 * set-ups with the same findings still differ.
 *
 * @param whole over all findings
 * @param parts over the findings of each thing protected
 */
public record Score(int whole, Map<String, Integer> parts) {

  private static final Map<Severity, Double> LEFT_BY_FAIL =
      new EnumMap<>(Map.of(Severity.STOP, 0.30, Severity.CAUTION, 0.85, Severity.NOTE, 0.98));
  private static final Map<Severity, Double> LEFT_BY_OPEN =
      new EnumMap<>(Map.of(Severity.STOP, 0.50, Severity.CAUTION, 0.93, Severity.NOTE, 0.99));

  /** Copies the map, keeping its order. */
  public Score {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /**
   * The score of a set-up.
   *
   * @param findings the cards with a finding
   * @param reserve the reserve of the hold
   */
  public static Score of(List<CardTrace> findings, HoldReserve reserve) {
    Map<String, Integer> parts = new LinkedHashMap<>();
    for (Protects protects : Protects.values()) {
      List<CardTrace> of = findings.stream().filter(f -> f.card().protects() == protects).toList();
      parts.put(
          protects.words(),
          rounded(left(of) * (protects == Protects.HOLDING ? reserve.share() : 1)));
    }
    return new Score(weighted(findings, reserve), parts);
  }

  /** The factor of a finding, between 0 and 1. */
  public static double share(Kind kind, Severity severity) {
    Double share = (kind == Kind.OPEN ? LEFT_BY_OPEN : LEFT_BY_FAIL).get(severity);
    return share == null ? 0 : share;
  }

  /**
   * The factor of a finding, between 0 and 1. A card that fails in every draw has its full cost;
   * one that fails in few has little more than an open one.
   */
  private static double share(CardOutcome finding) {
    double open = share(Kind.OPEN, finding.severity());
    return finding.kind() == Kind.OPEN
        ? open
        : open + (share(finding.kind(), finding.severity()) - open) * finding.share();
  }

  /**
   * The score from outcomes alone, 0 to 100.
   *
   * @param findings the cards with a finding
   * @param reserve the reserve of the hold
   */
  public static int weighted(List<? extends CardOutcome> findings, HoldReserve reserve) {
    return rounded(left(findings, reserve));
  }

  private static int rounded(double left) {
    return (int) Math.round(100 * left);
  }

  /**
   * The score before rounding, between 0 and 1: precise enough to compare two poor set-ups.
   *
   * @param findings the cards with a finding
   * @param reserve the reserve of the hold
   */
  public static double left(List<? extends CardOutcome> findings, HoldReserve reserve) {
    return left(findings) * reserve.share();
  }

  /**
   * The factor of all findings, between 0 and 1.
   *
   * @param findings the cards with a finding
   */
  public static double left(List<? extends CardOutcome> findings) {
    double[] gravestFirst =
        findings.stream()
            .mapToDouble(finding -> -Math.log(share(finding)))
            .map(loss -> -loss)
            .sorted()
            .map(loss -> -loss)
            .toArray();
    double loss = 0;
    for (int i = 0; i < gravestFirst.length; i++) {
      loss += gravestFirst[i] / (i + 1);
    }
    return Math.exp(-loss);
  }
}
