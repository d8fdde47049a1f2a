package org.standproud.rules.gate;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.CardFiles;
import org.standproud.rules.card.CardLimits;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Expectation;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CardCompiler;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.GateResult.Published;
import org.standproud.rules.gate.GateResult.Rejected;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.UnitReader;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/**
 * The one way into service: parse the cards, check them, build the engine, run every example,
 * measure coverage; then pass them, or refuse them with every error found. Edits of the folder and
 * by request go through the same gate.
 */
public final class Gate {

  private final FactTable facts;
  private final UnitReader units;
  private final Function<String, Optional<Evidence>> bases;
  private final Coverage.Demand demand;
  private final RetiredCards retired;

  /** Creates a gate for a vocabulary, without retired cards. */
  public Gate(
      List<Fact> vocabulary,
      UnitReader units,
      Function<String, Optional<Evidence>> bases,
      Coverage.Demand demand) {
    this(vocabulary, units, bases, demand, RetiredCards.none());
  }

  /**
   * Creates a gate for a vocabulary.
   *
   * @param vocabulary the facts cards may use; conditions must be able to read all their names
   * @param units the unit reader
   * @param bases evidence of the demonstration set-ups that examples start from, by name
   * @param demand what to do about incomplete coverage
   * @param retired ids that no card may reuse
   */
  public Gate(
      List<Fact> vocabulary,
      UnitReader units,
      Function<String, Optional<Evidence>> bases,
      Coverage.Demand demand,
      RetiredCards retired) {
    this.facts = new FactTable(vocabulary);
    this.units = units;
    this.bases = bases;
    this.demand = demand;
    this.retired = retired;
  }

  /**
   * Checks all cards under a folder.
   *
   * @param folder the folder
   * @param by the authorship
   * @throws UncheckedIOException if the folder cannot be read
   */
  public GateResult check(Path folder, Authorship by) {
    CardFolder.Contents contents = CardFolder.read(folder);
    return contents.errors().isEmpty()
        ? check(contents.files(), by)
        : new Rejected(contents.errors());
  }

  /**
   * Checks cards given as texts.
   *
   * @param files the text of each file by path; the folder names what the card protects
   * @param by the authorship
   */
  public GateResult check(Map<String, String> files, Authorship by) {
    Draft draft = draft(files, by);
    return draft.ruleBase() == null || !draft.errors().isEmpty()
        ? new Rejected(draft.errors(), draft.warnings())
        : new Published(draft.ruleBase(), draft.coverage(), draft.warnings());
  }

  /**
   * Compiles draft cards as far as possible, whatever the examples show.
   *
   * @param files the text of each file by its path
   * @param by the authorship
   */
  public Draft draft(Map<String, String> files, Authorship by) {
    CardFiles read = CardFiles.read(files, CardFolder::misnamed);
    List<CardError> errors = new ArrayList<>(read.errors());
    if (read.cards().isEmpty() && errors.isEmpty()) {
      errors.add(CardError.at("", new Written("", 1, 1), "there are no cards"));
    }
    if (errors.isEmpty()) {
      CardCompiler.Outcome compiled = CardCompiler.compile(read.cards(), facts, units);
      List<CardError> unfounded = unfounded(read.cards());
      if (compiled.errors().isEmpty()) {
        return build(compiled.cards(), read.levels(), unfounded, by);
      }
      errors.addAll(compiled.errors());
      errors.addAll(unfounded);
    }
    return refused(errors);
  }

  /**
   * A draft of cards.
   *
   * @param ruleBase the rule base, or null if the cards do not compile
   * @param coverage coverage by the examples
   * @param errors the errors by file, line and column
   * @param warnings what is unusual but allowed
   */
  public record Draft(
      @Nullable RuleBase ruleBase,
      Coverage coverage,
      List<CardError> errors,
      List<CardWarning> warnings) {
    /** Copies the lists. */
    public Draft {
      errors = List.copyOf(errors);
      warnings = List.copyOf(warnings);
    }
  }

  /** A draft in which some cards cannot even be parsed. */
  public Draft refused(List<CardError> errors) {
    return new Draft(null, new Coverage(nothingKnown()), sorted(errors), List.of());
  }

  /** By position, at most {@link CardLimits#MAX_ERRORS} for each file. */
  private static List<CardError> sorted(List<CardError> errors) {
    Map<String, List<CardError>> byFile =
        errors.stream().collect(groupingBy(CardError::file, TreeMap::new, toList()));
    return byFile.values().stream()
        .flatMap(
            ofOne ->
                ofOne.stream()
                    .sorted(
                        Comparator.comparingInt(CardError::line)
                            .thenComparingInt(CardError::column))
                    .limit(CardLimits.MAX_ERRORS))
        .toList();
  }

  /** Errors in sources and ids of cards that can be parsed. */
  private List<CardError> unfounded(List<Card> cards) {
    List<CardError> errors = new ArrayList<>();
    for (Card card : cards) {
      errors.addAll(SourceReview.of(card));
      CardError reused = retired.reused(card);
      if (reused != null) {
        errors.add(reused);
      }
    }
    return errors;
  }

  private Readings nothingKnown() {
    return new Readings(facts, new Evidence(List.of()));
  }

  private Draft build(
      List<CompiledCard> cards, Levels levels, List<CardError> unfounded, Authorship by) {
    RuleBase ruleBase = new RuleBase(cards, facts, levels, by);
    List<CardError> errors = new ArrayList<>(unfounded);
    Coverage coverage = new Coverage(nothingKnown());
    for (CompiledCard card : cards) {
      coverage.expect(card);
      for (Ran ran : run(ruleBase, card)) {
        errors.addAll(ran.errors());
        if (ran.trace() != null) {
          coverage.add(card, ran.trace());
        }
      }
    }
    if (errors.isEmpty() && demand == Coverage.Demand.REFUSE) {
      errors.addAll(coverage.gaps());
    }
    return new Draft(ruleBase, coverage, sorted(errors), CatalogueReview.of(cards));
  }

  /**
   * The result of one example.
   *
   * @param example the example
   * @param trace the outcome of the card, or null if the example cannot be read
   * @param errors the errors; empty if the result is as expected
   */
  public record Ran(Example example, @Nullable CardTrace trace, List<CardError> errors) {
    /** Copies the list. */
    public Ran {
      errors = List.copyOf(errors);
    }
  }

  /**
   * Runs the examples of one card.
   *
   * @param ruleBase its rule base
   * @param card the card
   */
  public List<Ran> run(RuleBase ruleBase, CompiledCard card) {
    return card.card().examples().stream().map(e -> run(ruleBase, card, e)).toList();
  }

  private Ran run(RuleBase ruleBase, CompiledCard compiled, Example example) {
    Card card = compiled.card();
    List<CardError> errors = new ArrayList<>();
    List<EvidenceValue> given = new GivenValues(facts, units).read(card.file(), example, errors);
    Evidence base = new Evidence(List.of());
    if (example.base() != null) {
      Optional<Evidence> named = bases.apply(example.base().text());
      base = named.orElse(base);
      if (named.isEmpty()) {
        errors.add(
            CardError.at(card.file(), example.base(), "no demonstration set-up has this name"));
      }
    }
    if (!errors.isEmpty()) {
      return new Ran(example, null, errors);
    }
    CardTrace trace = ruleBase.evaluate(base.with(given), compiled.id());
    if (trace.kind() != kind(card, example.expect())) {
      errors.add(CardError.at(card.file(), example.says(), surprise(example, trace)));
    }
    return new Ran(example, trace, errors);
  }

  private static Kind kind(Card card, Expectation expectation) {
    return switch (expectation) {
      case FAIL -> card.flags() ? Kind.FAIL : Kind.INFORMATIONAL;
      case PASS -> Kind.PASS;
      case OPEN -> Kind.OPEN;
      case NOT_APPLICABLE -> Kind.NOT_APPLICABLE;
    };
  }

  private static String surprise(Example example, CardTrace trace) {
    StringBuilder text = new StringBuilder("the example expects ");
    text.append(example.expect().words()).append(" but the card says ");
    text.append(trace.kind() == Kind.INFORMATIONAL ? "fail" : trace.kind().words());
    trace
        .conditions()
        .forEach(
            c ->
                text.append("; ")
                    .append(c.words())
                    .append(": ")
                    .append(c.truth().name())
                    .append(c.unknown().isEmpty() ? "" : " (" + c.unknown().get(0) + ")"));
    return text.toString();
  }
}
