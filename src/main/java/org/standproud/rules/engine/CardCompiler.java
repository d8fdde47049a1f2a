package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.CardLimits;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.ConditionParser;
import org.standproud.rules.language.ConditionRefused;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Nearest;
import org.standproud.rules.language.QuantityRefused;
import org.standproud.rules.language.Term;
import org.standproud.rules.language.UnitReader;

/** Compiles cards, or reports their errors. */
public final class CardCompiler {

  /** Most judgements one card may read. */
  public static final int MAX_JUDGEMENTS = 3;

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)\\}");

  private final FactTable facts;
  private final UnitReader units;
  private final Map<String, Card> byId = new HashMap<>();
  private final Map<String, Card> byJudgement = new HashMap<>();
  private final List<CardError> errors = new ArrayList<>();

  private CardCompiler(FactTable facts, UnitReader units) {
    this.facts = facts;
    this.units = units;
  }

  /**
   * The compiled cards, in the order of their ids.
   *
   * @param cards empty if there are errors
   * @param errors the errors
   */
  public record Outcome(List<CompiledCard> cards, List<CardError> errors) {
    /** Copies the lists. */
    public Outcome {
      cards = List.copyOf(cards);
      errors = List.copyOf(errors);
    }
  }

  /**
   * Compiles a catalogue.
   *
   * @param cards the cards
   * @param facts the vocabulary
   * @param units the unit reader
   */
  public static Outcome compile(List<Card> cards, FactTable facts, UnitReader units) {
    CardCompiler compiler = new CardCompiler(facts, units);
    List<Card> sorted = cards.stream().sorted(Comparator.comparing(c -> c.id().text())).toList();
    compiler.register(sorted);
    ConditionParser parser = new ConditionParser(facts, compiler.byJudgement.keySet());
    List<CompiledCard> compiled =
        sorted.stream().map(card -> compiler.compile(card, parser)).toList();
    if (compiler.errors.isEmpty()) {
      compiled.forEach(compiler::checkReach);
      compiler.checkRings(compiled);
    }
    return compiler.errors.isEmpty()
        ? new Outcome(compiled, List.of())
        : new Outcome(List.of(), compiler.errors);
  }

  /** People and some systems take ids that differ only in case for the same. */
  private void registerId(Card card, Map<String, Card> folded) {
    Card like = folded.putIfAbsent(card.id().text().toLowerCase(Locale.ROOT), card);
    if (like != null && !like.id().text().equals(card.id().text())) {
      String message =
          "this id differs from "
              + like.id().text()
              + " of "
              + like.file()
              + " only in the case of letters";
      error(card, card.id(), message, null, null);
    }
  }

  private void register(List<Card> cards) {
    Map<String, Card> folded = new HashMap<>();
    if (cards.size() > CardLimits.MAX_CARDS) {
      Card last = cards.get(cards.size() - 1);
      error(last, last.id(), "more than " + CardLimits.MAX_CARDS + " cards", null, null);
    }
    for (Card card : cards) {
      registerId(card, folded);
      Card other = byId.putIfAbsent(card.id().text(), card);
      if (other != null) {
        error(card, card.id(), "this id is taken by " + other.file(), null, null);
      }
      Written derives = card.derives();
      if (derives != null) {
        Card first = byJudgement.putIfAbsent(derives.text(), card);
        if (first != null) {
          error(card, derives, "already derived by " + first.id().text(), null, null);
        }
        if (facts.find(derives.text()) != null) {
          error(card, derives, "a fact has this name", null, null);
        }
      }
    }
  }

  private CompiledCard compile(Card card, ConditionParser parser) {
    Map<String, Term.Limit> limits = limits(card);
    List<Condition> when = new ArrayList<>();
    for (Written written : card.when()) {
      try {
        when.add(parser.parse(written.text(), limits));
      } catch (ConditionRefused e) {
        // An unreadable limit is reported once, at its definition.
        if (limits.containsKey(e.fragment()) || !card.limits().containsKey(e.fragment())) {
          errors.add(refused(card, written, e));
        }
      }
    }
    CompiledCard compiled =
        new CompiledCard(card, scope(card), when, limits, placeholders(card, limits));
    if (compiled.judgements().size() > MAX_JUDGEMENTS) {
      error(card, card.id(), "reads more than " + MAX_JUDGEMENTS + " judgements", null, null);
    }
    checkUsed(card, when, limits);
    checkChange(card);
    checkSilence(card);
    return compiled;
  }

  private static CardError refused(Card card, Written written, ConditionRefused e) {
    boolean first = e.line() == 1;
    return new CardError(
        card.file(),
        written.line() + e.line() - 1,
        first ? written.column() + e.column() - 1 : e.column(),
        e.fragment(),
        e.reason(),
        e.nearest(),
        e.example());
  }

  private Map<String, Term.Limit> limits(Card card) {
    Map<String, Term.Limit> limits = new LinkedHashMap<>();
    for (Map.Entry<String, Written> entry : card.limits().entrySet()) {
      String name = entry.getKey();
      Written value = entry.getValue();
      if (facts.find(name) != null || byJudgement.containsKey(name)) {
        error(
            card,
            value,
            "the limit \"" + name + "\" has the name of a fact or judgement",
            null,
            null);
      }
      try {
        limits.put(name, new Term.Limit(name, units.read(value.text()), value.text()));
      } catch (IllegalArgumentException e) {
        String nearest = QuantityRefused.nearest(e);
        error(card, value, "not a quantity: " + e.getMessage(), nearest, name + ": 12 mm");
      }
    }
    return limits;
  }

  private List<Condition> scope(Card card) {
    List<Condition> scope = new ArrayList<>();
    card.appliesTo()
        .forEach(
            (name, words) -> {
              Condition selector = selector(card, name, words);
              if (selector != null) {
                scope.add(selector);
              }
            });
    return scope;
  }

  private @Nullable Condition selector(Card card, String name, List<Written> words) {
    Written at = words.isEmpty() ? card.id() : words.get(0);
    Fact fact = facts.find(name);
    if (fact != null && fact.type() instanceof Fact.Word word) {
      for (Written written : words) {
        if (!word.allowed().contains(written.text())) {
          String allowed = String.join(", ", word.allowed());
          String near = Nearest.of(written.text(), word.allowed());
          error(card, written, name + " is one of: " + allowed, near, word(fact, word));
        }
      }
      return facts.oneOf(fact, words.stream().map(Written::text).toList());
    }
    if (fact != null && fact.type() instanceof Fact.YesNo && words.size() == 1) {
      if (!Set.of("true", "false").contains(at.text())) {
        error(card, at, name + " is true or false", null, name + ": true");
      }
      return facts.yes(fact, at.text().equals("true"));
    }
    List<String> wordFacts =
        facts.facts().stream().filter(f -> f.number() == null).map(Fact::name).toList();
    errors.add(
        new CardError(
            card.file(),
            at.line(),
            at.column(),
            name,
            "appliesTo names a fact that is a word or a yes or no; a number belongs under when",
            Nearest.of(name, wordFacts),
            facts.facts().stream()
                .filter(f -> f.type() instanceof Fact.Word)
                .map(f -> word(f, (Fact.Word) f.type()))
                .findFirst()
                .orElse(null)));
    return null;
  }

  private static String word(Fact fact, Fact.Word word) {
    return fact.name() + ": " + word.allowed().get(0);
  }

  private List<String> placeholders(Card card, Map<String, Term.Limit> limits) {
    List<String> names = new ArrayList<>();
    Matcher matcher = PLACEHOLDER.matcher(card.message().text());
    while (matcher.find()) {
      String name = matcher.group(1).strip();
      names.add(name);
      if (facts.find(name) == null && !card.limits().containsKey(name)) {
        Set<String> known = new TreeSet<>(limits.keySet());
        facts.facts().forEach(f -> known.add(f.name()));
        Written at = card.message();
        errors.add(
            new CardError(
                card.file(),
                at.line(),
                at.column(),
                "{" + name + "}",
                "no fact or limit has this name",
                Nearest.of(name, known),
                known.isEmpty() ? null : "{" + known.iterator().next() + "}"));
      }
    }
    String rest = matcher.replaceAll("");
    if (rest.contains("{") || rest.contains("}")) {
      error(card, card.message(), "a placeholder is not closed", null, "grip is {grip depth}");
    }
    return names.stream().distinct().toList();
  }

  private void checkUsed(Card card, List<Condition> when, Map<String, Term.Limit> limits) {
    if (when.size() != card.when().size()) {
      return; // a refused condition may be the one that uses the limit
    }
    for (String name : limits.keySet()) {
      boolean used =
          card.when().stream().anyMatch(w -> w.text().replaceAll("\\s+", " ").contains(name));
      if (!used) {
        error(
            card,
            card.limits().get(name),
            "no condition uses the limit \"" + name + "\"",
            null,
            null);
      }
    }
  }

  private void checkChange(Card card) {
    if (card.change() == null) {
      return;
    }
    Written target = card.change().card();
    Card other = byId.get(target.text());
    if (other == null) {
      error(
          card,
          target,
          "there is no card with this id",
          Nearest.of(target.text(), byId.keySet()),
          null);
    } else if (!other.flags()) {
      error(card, target, "this card has no finding of its own to change", null, null);
    } else if (!card.change().overrides() && card.change().to().compareTo(other.severity()) >= 0) {
      error(
          card,
          target,
          "eases must lower the severity; it is " + other.severity().words(),
          null,
          null);
    }
  }

  private void checkSilence(Card card) {
    for (Written id : card.silencedBy()) {
      Card other = byId.get(id.text());
      if (other == null) {
        String nearest = Nearest.of(id.text(), byId.keySet());
        error(card, id, "there is no card with this id", nearest, null);
      } else if (other == card || !other.flags()) {
        error(card, id, "a card is silenced by the finding of another", null, null);
      } else if (other.severity().compareTo(card.severity()) <= 0) {
        error(
            card,
            id,
            "a card is silenced by a more severe one; this is a " + other.severity().words(),
            null,
            null);
      }
    }
  }

  private void checkReach(CompiledCard compiled) {
    Map<Fact, Set<String>> left = new HashMap<>();
    List<Condition> parts = new ArrayList<>();
    flatten(compiled.whole(), parts);
    for (Condition part : parts) {
      if (part instanceof Condition.OneOf one) {
        Set<String> words = left.computeIfAbsent(one.fact(), f -> new HashSet<>(one.words()));
        words.retainAll(one.words());
        if (words.isEmpty()) {
          Card card = compiled.card();
          String why = one.fact().name() + " would have to be two words at once";
          error(card, card.when().get(0), "the card can never hold: " + why, null, null);
        }
      }
    }
  }

  private static void flatten(Condition condition, List<Condition> parts) {
    if (condition instanceof Condition.Joined joined && joined.join() == Condition.Join.ALL) {
      joined.conditions().forEach(c -> flatten(c, parts));
    } else {
      parts.add(condition);
    }
  }

  private void checkRings(List<CompiledCard> compiled) {
    Map<String, CompiledCard> deriving = new HashMap<>();
    compiled.forEach(
        c -> {
          if (c.card().derives() != null) {
            deriving.put(c.card().derives().text(), c);
          }
        });
    for (String judgement : new TreeSet<>(deriving.keySet())) {
      if (reaches(judgement, judgement, deriving, new HashSet<>())) {
        Card card = byJudgement.get(judgement);
        if (card != null && card.derives() != null) {
          error(card, card.derives(), "this judgement depends on itself", null, null);
        }
      }
    }
  }

  private static boolean reaches(
      String from, String target, Map<String, CompiledCard> deriving, Set<String> seen) {
    CompiledCard card = deriving.get(from);
    if (card == null || !seen.add(from)) {
      return false;
    }
    for (String next : card.judgements()) {
      if (next.equals(target) || reaches(next, target, deriving, seen)) {
        return true;
      }
    }
    return false;
  }

  private void error(
      Card card,
      @Nullable Written at,
      String message,
      @Nullable String nearest,
      @Nullable String example) {
    Written where = at == null ? card.id() : at;
    errors.add(
        new CardError(
            card.file(), where.line(), where.column(), where.text(), message, nearest, example));
  }
}
