package org.standproud.web.cards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.shop.trial.CardTrials;
import org.standproud.shop.trial.CardTrials.TrialFinding;
import org.standproud.web.recorded.CardLine;

/**
 * The result of trying a card on a set-up.
 *
 * @param on the set-up, in words
 * @param verdict the verdict with it; null if it does not compile
 * @param inService the verdict of the cards in service; null if none are
 * @param cards the card, condition by condition
 * @param moves findings that differ
 */
public record TrialView(
    String on,
    @Nullable String verdict,
    @Nullable String inService,
    List<CardLine> cards,
    List<Moved> moves) {

  /**
   * A finding that differs.
   *
   * @param card its card
   * @param before the finding of the cards in service; null if there is none
   * @param after the finding with the draft; null if there is none
   */
  public record Moved(String card, @Nullable String before, @Nullable String after) {}

  /** Copies the lists. */
  public TrialView {
    cards = List.copyOf(cards);
    moves = List.copyOf(moves);
  }

  static TrialView of(String on, CardTrials.TrialAnswer answer, UnitSystem units) {
    return new TrialView(
        on,
        words(answer.draft()),
        words(answer.inService()),
        answer.cards().stream().map(card -> CardLine.of(card, units)).toList(),
        moves(findings(answer.inService()), findings(answer.draft())));
  }

  private static @Nullable String words(CardTrials.@Nullable Side side) {
    return side == null ? null : side.verdict() + ", " + side.score() + " of 100";
  }

  private static Map<String, String> findings(CardTrials.@Nullable Side side) {
    Map<String, String> findings = new LinkedHashMap<>();
    for (TrialFinding f : side == null ? List.<TrialFinding>of() : side.findings()) {
      findings.put(f.card(), f.severity() + ", " + f.kind() + ": " + f.message());
    }
    return findings;
  }

  private static List<Moved> moves(Map<String, String> before, Map<String, String> after) {
    TreeSet<String> cards = new TreeSet<>(before.keySet());
    cards.addAll(after.keySet());
    List<Moved> moves = new ArrayList<>();
    for (String card : cards) {
      String was = before.get(card);
      String is = after.get(card);
      if (was == null || !was.equals(is)) {
        moves.add(new Moved(card, was, is));
      }
    }
    return moves;
  }
}
