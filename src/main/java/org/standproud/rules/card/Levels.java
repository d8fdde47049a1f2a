package org.standproud.rules.card;

import java.util.EnumMap;
import java.util.Map;

/**
 * The share of the draws above which a finding of each severity is reported: a card fires when its
 * conditions hold in more than that share.
 *
 * @param shares a share for each severity, 0 to 1
 * @param source their source
 */
public record Levels(Map<Severity, Double> shares, String source) {

  /** The file with the levels. */
  public static final String FILE = "levels.yaml";

  /** Without that file a card fires as soon as it holds in any draw, which is the most cautious. */
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
