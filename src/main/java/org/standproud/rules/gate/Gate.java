package org.standproud.rules.gate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.CardLimits;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Expectation;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CardCompiler;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.GateResult.Published;
import org.standproud.rules.gate.GateResult.Rejected;
import org.standproud.rules.language.ConditionParser;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.UnitReader;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/**
 * The one way into service: read the cards, check them, build the engine, run every example, look
 * at coverage; then publish, or refuse with every error found. Directory edits and edits by request
 * go through the same gate.
 */
public final class Gate {

  private final FactTable facts;
  private final UnitReader units;
  private final Function<String, Optional<Evidence>> bases;
  private final Coverage.Demand demand;

  /**
   * A gate for one vocabulary.
   *
   * @param vocabulary the facts cards may speak of
   * @param units how quantities are read
   * @param bases evidence of the demonstration set-ups examples may start from, by name
   * @param demand what to do about conditions the examples do not reach
   * @throws IllegalArgumentException if the language of conditions cannot read the name of a fact
   */
  public Gate(
      List<Fact> vocabulary,
      UnitReader units,
      Function<String, Optional<Evidence>> bases,
      Coverage.Demand demand) {
    this.facts = new FactTable(vocabulary);
    this.units = units;
    this.bases = bases;
    this.demand = demand;
    List<String> unreadable = new ConditionParser(facts, Set.of()).unreadableNames();
    if (!unreadable.isEmpty()) {
      throw new IllegalArgumentException("conditions cannot read the facts " + unreadable);
    }
  }

  /**
   * Checks all cards under a folder: files named {@code *.yaml} or {@code *.yml} in the folders of
   * what they protect.
   *
   * @param folder the folder
   * @param by who publishes them
   * @throws UncheckedIOException if the folder cannot be read
   */
  public GateResult check(Path folder, Authorship by) {
    Map<String, String> files = new TreeMap<>();
    List<CardError> unreadable = new ArrayList<>();
    try (Stream<Path> paths = Files.walk(folder, 3)) {
      for (Path path : paths.filter(Gate::isCard).toList()) {
        String name = folder.relativize(path).toString();
        if (Files.size(path) > 4L * CardLimits.MAX_CARD_LENGTH) {
          unreadable.add(CardError.at(name, new Written("", 1, 1), "the file is too large"));
        } else {
          readInto(files, name, path, unreadable);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return unreadable.isEmpty() ? check(files, by) : new Rejected(unreadable);
  }

  private static boolean isCard(Path path) {
    String name = path.getFileName().toString();
    return Files.isRegularFile(path) && (name.endsWith(".yaml") || name.endsWith(".yml"));
  }

  private static void readInto(
      Map<String, String> files, String name, Path path, List<CardError> unreadable)
      throws IOException {
    try {
      files.put(name, Files.readString(path));
    } catch (MalformedInputException e) {
      unreadable.add(CardError.at(name, new Written("", 1, 1), "the file is not UTF-8 text"));
    }
  }

  /**
   * Checks cards given as texts.
   *
   * @param files the text of each file by its path, the folder being what the card protects
   * @param by who publishes them
   */
  public GateResult check(Map<String, String> files, Authorship by) {
    List<CardError> errors = new ArrayList<>();
    List<Card> cards = new ArrayList<>();
    new TreeMap<>(files)
        .forEach(
            (file, yaml) -> {
              CardReader.Outcome outcome = CardReader.read(file, yaml);
              errors.addAll(outcome.errors());
              if (outcome.card() != null) {
                cards.add(outcome.card());
              }
            });
    if (cards.isEmpty() && errors.isEmpty()) {
      errors.add(CardError.at("", new Written("", 1, 1), "there are no cards"));
    }
    if (!errors.isEmpty()) {
      return rejected(errors);
    }
    CardCompiler.Outcome compiled = CardCompiler.compile(cards, facts, units);
    return compiled.errors().isEmpty() ? build(compiled.cards(), by) : rejected(compiled.errors());
  }

  private static Rejected rejected(List<CardError> errors) {
    return new Rejected(
        errors.stream()
            .sorted(
                Comparator.comparing(CardError::file)
                    .thenComparingInt(CardError::line)
                    .thenComparingInt(CardError::column))
            .toList());
  }

  private GateResult build(List<CompiledCard> cards, Authorship by) {
    RuleBase ruleBase = new RuleBase(cards, facts, by);
    List<CardError> errors = new ArrayList<>();
    Coverage coverage = new Coverage();
    for (CompiledCard card : cards) {
      for (Example example : card.card().examples()) {
        run(ruleBase, card.card(), example, coverage, errors);
      }
    }
    if (errors.isEmpty() && demand == Coverage.Demand.REFUSE) {
      errors.addAll(coverage.gaps());
    }
    return errors.isEmpty() ? new Published(ruleBase, coverage) : rejected(errors);
  }

  private void run(
      RuleBase ruleBase, Card card, Example example, Coverage coverage, List<CardError> errors) {
    int before = errors.size();
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
    if (errors.size() > before) {
      return;
    }
    CardTrace trace = ruleBase.evaluate(base.with(given)).card(card.id().text());
    coverage.add(trace);
    if (trace.kind() != kind(card, example.expect())) {
      errors.add(CardError.at(card.file(), example.says(), surprise(example, trace)));
    }
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
    text.append(trace.kind() == Kind.INFORMATIONAL ? "fail" : trace.kind().code());
    trace
        .conditions()
        .forEach(
            c ->
                text.append("; ")
                    .append(c.words())
                    .append(": ")
                    .append(c.truth())
                    .append(c.unknown().isEmpty() ? "" : " (" + c.unknown().get(0) + ")"));
    return text.toString();
  }
}
