package org.standproud.rules.engine;

import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;

/**
 * One set-up before the cards: what they read, what each was found to say, and what the engine made
 * of it. It is the object in the working memory; the constraints of the network ask it, and what
 * they had to find out is not found out again. Cards are named by their place in the rule base. For
 * one thread and one assessment.
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
   * What scope and conditions of a card come to as far as they hang on no judgement; false in every
   * draw is all there is to say then.
   */
  abstract DrawTruth early(int card);

  /** What scope and conditions of a card come to together, once {@link #early} was asked. */
  abstract DrawTruth whole(int card, Judgements judgements);

  @Override
  public Evaluation hearing() {
    return this;
  }

  Readings readings() {
    return readings;
  }

  /** The word that a selector asks for, empty if it is missing or not the same in every draw. */
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

  /** Whether the engine let the card change the finding of another. */
  boolean acted(int card) {
    return acted.get(card);
  }

  boolean nobodyActed() {
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
