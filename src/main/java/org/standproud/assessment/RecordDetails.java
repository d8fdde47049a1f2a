package org.standproud.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.AssessmentPipeline.Explained;
import org.standproud.assessment.EvidenceDocument.FactLine;
import org.standproud.assessment.ResultsInShort.CardInShort;
import org.standproud.assessment.ResultsInShort.PartInShort;
import org.standproud.assessment.TraceDocument.CardResult;
import org.standproud.assessment.TraceDocument.ConditionResult;
import org.standproud.assessment.acceptance.CardOutcomes;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Results;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.Condition;
import org.standproud.setup.request.CanonicalText;

/**
 * Evidence and trace of a record, word for word. They are computed again from its set-up with the
 * cards of then, and shown only if values and outcomes are those of the record; otherwise the
 * record's own are shown, and what only the program of then could add is left out.
 */
public final class RecordDetails implements CardOutcomes {

  private final AssessmentPipeline making;
  private final Function<String, Optional<RuleBase>> rules;
  private final String engine;

  /**
   * Creates the reader.
   *
   * @param making computes evidence and trace
   * @param rules finds the rule base of a revision; empty if this program cannot build it
   * @param engine version of this program
   */
  public RecordDetails(
      AssessmentPipeline making, Function<String, Optional<RuleBase>> rules, String engine) {
    this.making = making;
    this.rules = rules;
    this.engine = engine;
  }

  /**
   * Evidence and trace of one record.
   *
   * @param evidence every fact
   * @param trace every card
   */
  public record Details(EvidenceDocument evidence, TraceDocument trace) {}

  /**
   * Reads or computes the details of a record.
   *
   * @param record a record with its payload
   */
  public Details of(AuditRecord record) {
    if (record.account().results() instanceof Results.Full full) {
      return new Details(EvidenceDocument.kept(full.evidence()), TraceDocument.kept(full.trace()));
    }
    Optional<RuleBase> cards = rules.apply(record.versions().ruleBase());
    return cards
        .flatMap(base -> again(record, base))
        .map(same -> new Details(same.evidence(), same.trace()))
        .orElseGet(() -> shortened(record, cards.orElse(null)));
  }

  @Override
  public Function<String, CanonicalJson> outcomes(AuditRecord record) {
    TraceDocument trace = of(record).trace();
    return card ->
        PlainJson.canonical(
            trace.card(card).orElseThrow(() -> new IllegalArgumentException("no card " + card)));
  }

  private Optional<Explained> again(AuditRecord record, RuleBase base) {
    try {
      Explained now = making.explain(CanonicalText.setup(record.account().setup().text()), base);
      return record.account().results().equals(new Results.Short(now.results()))
          ? Optional.of(now)
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // A set-up that this program cannot read.
    }
  }

  private Details shortened(AuditRecord record, @Nullable RuleBase base) {
    ResultsInShort kept = ResultsInShort.read(record.account().results());
    String why =
        "Assessed by version "
            + record.versions().engine()
            + ", and version "
            + engine
            + " does not compute the same. Formulas, inputs, assumptions and the margins of cards"
            + " without a finding are left out; values and outcomes are those of the record.";
    Map<String, FactValue> facts = new TreeMap<>();
    kept.facts()
        .forEach((name, value) -> facts.put(name, value.named(name, unit(name), kept.draws())));
    List<CardResult> cards = new ArrayList<>();
    kept.cards().forEach((id, card) -> cards.add(result(id, card, base, facts, kept)));
    return new Details(
        new EvidenceDocument(
            facts.values().stream().map(v -> new FactLine(v, "", List.of(), List.of())).toList(),
            why),
        new TraceDocument(record.versions().ruleBase(), cards, kept.judgements(), why));
  }

  private static @Nullable String unit(String name) {
    Fact fact = EvidenceDocument.FACTS.get(name);
    Fact.Number number = fact == null ? null : fact.number();
    return number == null ? null : number.dimension().siUnit();
  }

  private static CardResult result(
      String id,
      CardInShort card,
      @Nullable RuleBase base,
      Map<String, FactValue> facts,
      ResultsInShort kept) {
    CompiledCard compiled = base == null ? null : base.card(id);
    return new CardResult(
        id,
        compiled == null ? id : compiled.card().title(),
        card.kind(),
        card.truth(),
        kept.share(card.holdsIn()),
        card.speaksAbove(),
        card.silencedBy(),
        card.severity(),
        card.changes() == null ? List.of() : card.changes(),
        compiled == null ? List.of() : parts(compiled, false, card.scope(), facts, kept),
        compiled == null ? List.of() : parts(compiled, true, card.conditions(), facts, kept),
        card.margin());
  }

  private static List<ConditionResult> parts(
      CompiledCard card,
      boolean when,
      @Nullable List<PartInShort> outcomes,
      Map<String, FactValue> facts,
      ResultsInShort kept) {
    List<ConditionResult> parts = new ArrayList<>();
    List<Condition> conditions = when ? card.when() : card.scope();
    for (int i = 0; outcomes != null && i < outcomes.size(); i++) {
      String words = conditions.get(i).toWords();
      TreeSet<String> names = new TreeSet<>();
      conditions.get(i).facts(fact -> names.add(fact.name()));
      parts.add(
          new ConditionResult(
              when ? card.card().when().get(i).text() : words,
              words,
              outcomes.get(i).truth(),
              kept.share(outcomes.get(i).holdsIn()),
              names.stream().filter(facts::containsKey).map(facts::get).toList(),
              List.of(),
              null));
    }
    return parts;
  }
}
