package org.standproud.rules.card;

import java.util.EnumMap;
import java.util.Map;

/**
 * From which share of the draws on a finding of each severity is reported: a card speaks when its
 * conditions hold in more than that share.
 *
 * @param shares for each severity a share, 0 to 1
 * @param source what they stand on
 */
public record Levels(Map<Severity, Double> shares, String source) {

  /** The file of a rule base that holds them. */
  public static final String FILE = "levels.yaml";

  /** Without that file a card speaks as soon as it holds in any draw: the most careful there is. */
  public static final Levels ANY_DRAW =
      new Levels(Map.of(Severity.STOP, 0.0, Severity.CAUTION, 0.0, Severity.NOTE, 0.0), "");

  /** Copies the map. */
  public Levels {
    shares = new EnumMap<>(shares);
    for (Severity severity : Severity.values()) {
      if (!shares.containsKey(severity)) {
        throw new IllegalArgumentException("no level for " + severity.words());
      }
    }
  }

  /** The share for a severity, 0 to 1. */
  public double of(Severity severity) {
    Double share = shares.get(severity);
    return share == null ? 0 : share;
  }
}
