package org.standproud.assessment;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.TraceDocument.CardResult;
import org.standproud.assessment.TraceDocument.Distance;
import org.standproud.assessment.TraceDocument.SeverityChange;
import org.standproud.audit.Results;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleTrace;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a record keeps of evidence and trace: the value of every fact and the outcome of every card,
 * numbers in SI units to seven figures. Formulas, words, inputs, assumptions and the margins of
 * cards that found nothing follow from the set-up and the cards.
 *
 * @param draws number of draws of the joint sample; shares are kept as so many of them
 * @param facts value of each fact by its name
 * @param cards outcome of each card by its id
 * @param judgements every named judgement with its truth
 */
public record ResultsInShort(
    int draws,
    Map<String, FactInShort> facts,
    Map<String, CardInShort> cards,
    Map<String, Truth> judgements) {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

  /**
   * The outcome of one card.
   *
   * @param kind fail, pass, open or notApplicable (SARIF 2.1.0)
   * @param truth true, false, either or unknown
   * @param holdsIn number of draws in which all its conditions hold
   * @param speaksAbove the share above which the card fires
   * @param silencedBy id of the card that finds the same with a higher severity; absent if none
   * @param severity its severity after all changes
   * @param changes the changes of severity; absent if there is none
   * @param scope the outcome of each selector of its scope; absent if it has none
   * @param conditions the outcome of each condition; absent if it has none
   * @param margin how far a finding is from flipping; absent for other cards
   */
  public record CardInShort(
      Kind kind,
      Truth truth,
      double holdsIn,
      double speaksAbove,
      @Nullable String silencedBy,
      Severity severity,
      @Nullable List<SeverityChange> changes,
      @Nullable List<PartInShort> scope,
      @Nullable List<PartInShort> conditions,
      @Nullable Distance margin) {

    static CardInShort of(CardTrace card) {
      return new CardInShort(
          card.kind(),
          card.truth(),
          draws(card.share()),
          Figures.of(card.level()),
          card.silencedBy(),
          card.severity(),
          filled(card.changes(), TraceDocument::change),
          filled(card.scope(), PartInShort::of),
          filled(card.conditions(), PartInShort::of),
          card.isFinding() ? rounded(TraceDocument.distance(card.margin())) : null);
    }

    static CardInShort of(CardResult card, boolean finding) {
      return new CardInShort(
          card.kind(),
          card.truth(),
          draws(card.share()),
          Figures.of(card.speaksAbove()),
          card.silencedBy(),
          card.severity(),
          filled(card.changes(), Function.identity()),
          filled(card.scope(), part -> new PartInShort(part.truth(), draws(part.share()))),
          filled(card.conditions(), part -> new PartInShort(part.truth(), draws(part.share()))),
          finding ? rounded(card.margin()) : null);
    }

    private static @Nullable Distance rounded(@Nullable Distance margin) {
      return margin == null ? null : margin.rounded();
    }
  }

  /**
   * The outcome of one condition.
   *
   * @param truth true, false, either or unknown
   * @param holdsIn number of draws in which it holds
   */
  @JsonFormat(shape = JsonFormat.Shape.ARRAY)
  @JsonPropertyOrder({"truth", "holdsIn"})
  public record PartInShort(Truth truth, double holdsIn) {
    static PartInShort of(ConditionTrace part) {
      return new PartInShort(part.truth(), draws(part.draws().share()));
    }
  }

  /**
   * The results of a set-up.
   *
   * @param evidence its evidence
   * @param trace the results of the cards
   */
  static ResultsInShort of(Evidence evidence, RuleTrace trace) {
    Map<String, FactInShort> facts = new TreeMap<>();
    for (EvidenceValue value : evidence.values()) {
      facts.put(value.fact().name(), FactInShort.of(FactValue.of(value.fact(), value.value())));
    }
    Map<String, CardInShort> cards = new TreeMap<>();
    trace.cards().forEach(card -> cards.put(card.id(), CardInShort.of(card)));
    return new ResultsInShort(Sample.DRAWS, facts, cards, TraceDocument.truths(trace));
  }

  /**
   * Reads the results of a record, in whatever form it has them.
   *
   * @param results the recorded results
   * @throws tools.jackson.core.JacksonException if they are not results
   */
  public static ResultsInShort read(Results results) {
    if (results instanceof Results.Short brief) {
      return MAPPER.readValue(brief.text().text(), ResultsInShort.class);
    }
    Results.Full full = (Results.Full) results;
    Map<String, FactInShort> facts = new TreeMap<>();
    EvidenceDocument.kept(full.evidence())
        .facts()
        .forEach(line -> facts.put(line.value().fact(), FactInShort.of(line.value())));
    TraceDocument trace = TraceDocument.kept(full.trace());
    Map<String, CardInShort> cards = new TreeMap<>();
    for (CardResult card : trace.cards()) {
      boolean finding = card.silencedBy() == null && card.kind().isFinding();
      cards.put(card.card(), CardInShort.of(card, finding));
    }
    return new ResultsInShort(Sample.DRAWS, facts, cards, trace.judgements());
  }

  /** The text of a record. */
  CanonicalJson text() {
    return PlainJson.canonical(this);
  }

  /** The facts that this program still has; formulas, inputs and assumptions are not kept. */
  public Evidence evidence() {
    List<EvidenceValue> values = new ArrayList<>();
    facts.forEach(
        (name, value) -> {
          Fact fact = EvidenceDocument.FACTS.get(name);
          if (fact != null) {
            values.add(
                new EvidenceValue(fact, value.of(fact, draws).value(), List.of(), List.of()));
          }
        });
    return new Evidence(values);
  }

  /** How far each finding was from flipping, by card id, where a number decides. */
  public Map<String, Distance> margins() {
    Map<String, Distance> margins = new TreeMap<>();
    cards.forEach(
        (id, card) -> {
          if (card.margin() != null) {
            margins.put(id, card.margin());
          }
        });
    return margins;
  }

  /** A share of the draws as a number of them. */
  static double draws(double share) {
    return Figures.of(share * Sample.DRAWS);
  }

  /**
   * A number of the draws as a share.
   *
   * @param number as kept
   */
  double share(double number) {
    return number / draws;
  }

  private static <T, A> @Nullable List<A> filled(List<T> items, Function<T, A> each) {
    return items.isEmpty() ? null : TraceDocument.each(items, each);
  }
}
