package org.standproud.advice;

import java.util.List;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Reading;

/**
 * How reliable a finding is, with its three parts.
 *
 * @param level the three parts together
 * @param source how good the source of the card is
 * @param completeness how much of what the card read was given rather than assumed or missing
 * @param distance how surely and how far the numbers lie past the limit
 */
public record Confidence(Grade level, Grade source, Grade completeness, Grade distance) {

  /** Nearer to a limit than this fraction of it, the side of the limit is not certain. */
  private static final double NEAR = 0.1;

  /** In a larger share of the draws than this, something is likely but not certain. */
  private static final double MOST = 0.5;

  static Confidence of(CardTrace card, Evidence evidence) {
    Grade source =
        switch (card.card().confidence()) {
          case HIGH -> Grade.HIGH;
          case MEDIUM -> Grade.MEDIUM;
          case LOW -> Grade.LOW;
        };
    Grade completeness = completeness(card, evidence);
    Grade distance = distance(card);
    return new Confidence(
        Grade.product(source, completeness, distance), source, completeness, distance);
  }

  private static Grade completeness(CardTrace card, Evidence evidence) {
    List<EvidenceValue> read =
        card.conditions().stream()
            .flatMap(condition -> condition.read().stream())
            .map(Reading::fact)
            .map(evidence::detail)
            .toList();
    boolean missing = read.stream().anyMatch(value -> value.value() instanceof Value.Missing);
    // A card that reads judgements only may be open although none of its own facts is missing.
    if (missing || card.kind() == Kind.OPEN) {
      return Grade.LOW;
    }
    boolean assumed = read.stream().anyMatch(value -> !value.assumptions().isEmpty());
    return assumed ? Grade.MEDIUM : Grade.HIGH;
  }

  private static Grade distance(CardTrace card) {
    if (card.truth() != Truth.TRUE) {
      return card.kind() == Kind.FAIL && card.share() > MOST ? Grade.MEDIUM : Grade.LOW;
    }
    boolean near = card.margin() != null && Math.abs(card.margin().relative()) < NEAR;
    return near ? Grade.MEDIUM : Grade.HIGH;
  }
}
