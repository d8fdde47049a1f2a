package org.standproud.assessment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Changed;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.FactChange;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.RuleTrace;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The outcome of every card, fired or not; numbers in SI units, unrounded.
 *
 * @param ruleBase the revision of the rule base
 * @param cards every card, in the order of their ids
 * @param judgements every named judgement with its truth
 * @param shortened what is left out and why, where a later program computes other numbers than the
 *     record; absent if it is whole
 */
public record TraceDocument(
    String ruleBase,
    List<CardResult> cards,
    Map<String, Truth> judgements,
    @Nullable String shortened) {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

  /**
   * The outcome of one card.
   *
   * @param card its id
   * @param title its claim
   * @param kind fail, pass, open or notApplicable (SARIF 2.1.0); informational for a card that only
   *     derives or eases
   * @param truth true, false, either (it holds in some draws only) or unknown (a fact is missing)
   * @param share share of the draws in which all its conditions hold, 0 to 1
   * @param speaksAbove the share above which the card fires
   * @param silencedBy id of the card that finds the same with a higher severity; absent if none
   *     does
   * @param severity its severity after all changes
   * @param changes the changes of severity
   * @param scope the outcome of each selector of its scope
   * @param conditions the outcome of each condition
   * @param margin how far the whole card is from flipping; absent if no number can flip it
   */
  public record CardResult(
      String card,
      String title,
      Kind kind,
      Truth truth,
      double share,
      double speaksAbove,
      @Nullable String silencedBy,
      Severity severity,
      List<SeverityChange> changes,
      List<ConditionResult> scope,
      List<ConditionResult> conditions,
      @Nullable Distance margin) {}

  /**
   * A change of severity that took place.
   *
   * @param by id of the card that changed it
   * @param overrides whether it set the severity outright, instead of easing it
   * @param to the new severity
   * @param because the reason
   */
  public record SeverityChange(String by, boolean overrides, Severity to, String because) {}

  /**
   * The outcome of one condition.
   *
   * @param written the condition as written in the card
   * @param words the condition in words, with the limits filled in
   * @param truth true, false, either or unknown
   * @param share share of the draws in which it holds, 0 to 1
   * @param facts the facts in it with their values
   * @param unknown why it cannot be judged; empty unless it is unknown
   * @param margin how far it is from flipping; absent if no number can flip it
   */
  public record ConditionResult(
      String written,
      String words,
      Truth truth,
      double share,
      List<FactValue> facts,
      List<String> unknown,
      @Nullable Distance margin) {}

  /**
   * How far a comparison is from flipping; clearances are negative while the card's condition
   * holds.
   *
   * @param comparison the comparison in words
   * @param unit SI unit of both sides; absent for a pure number
   * @param place position in a list, from 1; absent if it is not about a list
   * @param value likely value of the left side, its median
   * @param low 5th percentile of the left side
   * @param high 95th percentile of the left side
   * @param threshold likely value of the right side
   * @param clearance distance between the likely values
   * @param adverse the same in the draw at the level of the card, counted from the worst. Where it
   *     turns negative, the card begins to fire.
   * @param flips for each fact in the comparison, the value at which it flips
   */
  public record Distance(
      String comparison,
      @Nullable String unit,
      @Nullable Integer place,
      double value,
      double low,
      double high,
      double threshold,
      double clearance,
      double adverse,
      List<Flip> flips) {

    /** The same to seven figures, as records keep it. */
    Distance rounded() {
      return new Distance(
          comparison,
          unit,
          place,
          Figures.of(value),
          Figures.of(low),
          Figures.of(high),
          Figures.of(threshold),
          Figures.of(clearance),
          Figures.of(adverse),
          each(flips, Flip::rounded));
    }
  }

  /**
   * The value of a fact at which a comparison flips.
   *
   * @param fact the fact
   * @param unit its SI unit; absent for a pure number
   * @param from its likely value now
   * @param likely where it flips with every other fact at its likely value; absent if nowhere
   * @param certain where it flips whatever the other facts are; absent if nowhere
   */
  public record Flip(
      String fact,
      @Nullable String unit,
      double from,
      @Nullable Double likely,
      @Nullable Double certain) {

    private Flip rounded() {
      return new Flip(fact, unit, Figures.of(from), figures(likely), figures(certain));
    }

    private static @Nullable Double figures(@Nullable Double number) {
      return number == null ? null : (Double) Figures.of(number);
    }
  }

  /**
   * The document of a trace.
   *
   * @param trace the results of the cards
   */
  public static TraceDocument of(RuleTrace trace) {
    return new TraceDocument(
        trace.revision(), each(trace.cards(), TraceDocument::line), truths(trace), null);
  }

  /** Every named judgement of a trace with its truth. */
  static Map<String, Truth> truths(RuleTrace trace) {
    Map<String, Truth> judgements = new TreeMap<>();
    trace.judgements().forEach((name, truth) -> judgements.put(name, truth.truth()));
    return judgements;
  }

  /** The trace of a record that has it in full. */
  static TraceDocument kept(CanonicalJson kept) {
    return MAPPER.readValue(kept.text(), TraceDocument.class);
  }

  /**
   * The outcome of one card.
   *
   * @param id its id
   */
  public Optional<CardResult> card(String id) {
    return cards.stream().filter(card -> card.card().equals(id)).findFirst();
  }

  /**
   * How far each finding is from flipping, by card id, where a number decides.
   *
   * @param trace the results of the cards
   */
  public static Map<String, Distance> margins(RuleTrace trace) {
    Map<String, Distance> margins = new TreeMap<>();
    for (CardTrace card : trace.findings()) {
      Distance margin = distance(card.margin());
      if (margin != null) {
        margins.put(card.id(), margin);
      }
    }
    return margins;
  }

  /** The outcome of one card. */
  static CardResult line(CardTrace card) {
    return new CardResult(
        card.id(),
        card.card().title(),
        card.kind(),
        card.truth(),
        card.share(),
        card.level(),
        card.silencedBy(),
        card.severity(),
        each(card.changes(), TraceDocument::change),
        each(card.scope(), TraceDocument::condition),
        each(card.conditions(), TraceDocument::condition),
        distance(card.margin()));
  }

  static SeverityChange change(Changed change) {
    return new SeverityChange(change.by(), change.overrides(), change.to(), change.because());
  }

  private static ConditionResult condition(ConditionTrace condition) {
    return new ConditionResult(
        condition.text().text(),
        condition.words(),
        condition.truth(),
        condition.draws().share(),
        each(condition.read(), r -> FactValue.of(r.fact(), r.value())),
        condition.unknown(),
        distance(condition.margin()));
  }

  static @Nullable Distance distance(@Nullable Margin margin) {
    if (margin == null) {
      return null;
    }
    return new Distance(
        margin.comparison(),
        margin.dimension() == null ? null : FactValue.unit(margin.dimension().siUnit()),
        margin.place(),
        margin.value(),
        margin.left().band().low(),
        margin.left().band().high(),
        margin.threshold(),
        margin.clearance(),
        margin.adverse(),
        each(margin.changes(), TraceDocument::flip));
  }

  private static Flip flip(FactChange change) {
    Fact.Number number = change.fact().number();
    return new Flip(
        change.fact().name(),
        number == null ? null : FactValue.unit(number.dimension().siUnit()),
        change.from(),
        change.likely(),
        change.certain());
  }

  /** No streams: a trace has a thousand lists of at most one item, and streams cost more. */
  static <T, A> List<A> each(List<T> items, Function<T, A> account) {
    if (items.isEmpty()) {
      return List.of();
    }
    List<A> accounts = new ArrayList<>(items.size());
    for (T one : items) {
      accounts.add(account.apply(one));
    }
    return Collections.unmodifiableList(accounts);
  }
}
