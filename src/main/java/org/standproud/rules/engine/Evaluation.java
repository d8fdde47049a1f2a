package org.standproud.rules.engine;

import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;

/**
 * The evaluation of one set-up: its readings, intermediate results, and what the engine concluded.
 * It is an object in the working memory; the constraints of the network query it and results are
 * cached. Cards are identified by their index in the rule base. For one thread and one assessment.
 */
abstract class Evaluation implements WorkingMemoryItem {

  private final Readings readings;
  private final Map<String, DrawTruth> judged = new TreeMap<>();
  private final BitSet flagged = new BitSet();
  private final BitSet acted = new BitSet();

  Evaluation(Readings readings) {
    this.readings = readings;
  }

  /**
   * The truth of a card's scope and of its conditions on facts alone; if it is false in every draw,
   * nothing else needs evaluating.
   */
  abstract DrawTruth early(int card);

  /** The truth of scope and conditions together, after {@link #early}. */
  abstract DrawTruth whole(int card, Judgements judgements);

  @Override
  public Evaluation evaluation() {
    return this;
  }

  Readings readings() {
    return readings;
  }

  /** The word for a selector, empty if it is missing or differs between draws. */
  String word(Condition.OneOf selector) {
    String word = selector.word(readings);
    return word == null ? "" : word;
  }

  /** The judgements derived so far. */
  DrawTruth judged(String name) {
    return judged.getOrDefault(name, DrawTruth.UNKNOWN);
  }

  /** Every judgement with its truth. */
  Map<String, DrawTruth> judgements() {
    return judged;
  }

  /** Whether the engine has a finding of the card. */
  boolean flagged(int card) {
    return flagged.get(card);
  }

  /** Whether the engine let the card change another's finding. */
  boolean acted(int card) {
    return acted.get(card);
  }

  boolean noneActed() {
    return acted.isEmpty();
  }

  void judge(String name, DrawTruth truth) {
    judged.put(name, truth);
  }

  void flag(int card) {
    flagged.set(card);
  }

  void act(int card) {
    acted.set(card);
  }
}
