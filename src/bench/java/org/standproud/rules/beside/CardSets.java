package org.standproud.rules.beside;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.LevelsReader;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CardCompiler;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.QuantityText;

/**
 * The shop's own cards in the number wanted: some of them with all they hang on, or all of them and
 * copies of those that flag, each copy with an id and limits of its own.
 */
final class CardSets {

  private static final Authorship BY =
      new Authorship("bench", "bench", Instant.parse("2026-11-25T08:00:00Z"), null);
  private static final Pattern NUMBER = Pattern.compile("(\\d+(?:\\.\\d+)?)(.*)");

  private CardSets() {}

  static RuleBase of(int count) {
    List<Card> all = shop();
    Map<String, Card> chosen = new LinkedHashMap<>();
    for (Card card : all) {
      if (chosen.size() < count && needs(card, all).size() + chosen.size() <= count) {
        needs(card, all).forEach(c -> chosen.putIfAbsent(c.id().text(), c));
      }
    }
    List<Card> cards = new ArrayList<>(chosen.values());
    cards.addAll(copies(all, count - cards.size(), Map.of()));
    return built(cards);
  }

  /** All of the shop's cards and so many more that are about an operation it never makes here. */
  static RuleBase withElsewhere(int more, String fact, String word) {
    List<Card> cards = new ArrayList<>(shop());
    Map<String, List<Written>> scope = Map.of(fact, List.of(new Written(word, 1, 1)));
    cards.addAll(copies(shop(), more, scope));
    return built(cards);
  }

  private static RuleBase built(List<Card> cards) {
    FactTable facts = new FactTable(Vocabulary.all());
    CardCompiler.Outcome outcome = CardCompiler.compile(cards, facts, new QuantityText());
    if (!outcome.errors().isEmpty()) {
      throw new IllegalStateException(outcome.errors().toString());
    }
    return new RuleBase(outcome.cards(), facts, levels(), BY);
  }

  private static Levels levels() {
    String yaml = CardFolder.read(Path.of("rules")).files().get(Levels.FILE);
    return LevelsReader.read(Levels.FILE, yaml).levels();
  }

  private static List<Card> shop() {
    Map<String, String> files = new TreeMap<>(CardFolder.read(Path.of("rules")).files());
    files.remove(Levels.FILE);
    List<Card> cards = new ArrayList<>();
    files.forEach((file, yaml) -> cards.add(CardReader.read(file, yaml).card()));
    return cards;
  }

  /** A card with the cards whose judgements it reads and the card it changes. */
  private static List<Card> needs(Card card, List<Card> all) {
    Map<String, Card> needed = new LinkedHashMap<>();
    for (Card other : all) {
      boolean changed =
          card.change() != null && card.change().card().text().equals(other.id().text());
      boolean read =
          other.derives() != null
              && other != card
              && card.when().stream().anyMatch(w -> w.text().contains(other.derives().text()));
      if (changed || read) {
        needs(other, all).forEach(c -> needed.putIfAbsent(c.id().text(), c));
      }
    }
    needed.put(card.id().text(), card);
    return new ArrayList<>(needed.values());
  }

  private static List<Card> copies(List<Card> all, int count, Map<String, List<Written>> scope) {
    List<Card> flagging = all.stream().filter(Card::flags).toList();
    List<Card> copies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int round = 1 + i / flagging.size();
      copies.add(copy(flagging.get(i % flagging.size()), round, scope));
    }
    return copies;
  }

  private static Card copy(Card of, int round, Map<String, List<Written>> scope) {
    Map<String, Written> limits = new LinkedHashMap<>();
    of.limits().forEach((name, limit) -> limits.put(name, changed(limit, round)));
    return new Card(
        of.file(),
        new Written(of.id().text() + "-" + round, 1, 1),
        of.title(),
        of.protects(),
        of.severity(),
        of.confidence(),
        of.source(),
        of.since(),
        of.revised(),
        of.owner(),
        scope.isEmpty() ? of.appliesTo() : scope,
        limits,
        of.when(),
        null,
        null,
        of.speaksAbove(),
        of.silencedBy(),
        of.message(),
        of.remedy(),
        of.why(),
        of.examples());
  }

  private static Written changed(Written limit, int round) {
    Matcher number = NUMBER.matcher(limit.text());
    if (!number.matches()) {
      return limit;
    }
    BigDecimal share = BigDecimal.valueOf(100 + round, 2);
    BigDecimal moved = new BigDecimal(number.group(1)).multiply(share).round(new MathContext(6));
    String text = moved.stripTrailingZeros().toPlainString() + number.group(2);
    return new Written(text, limit.line(), limit.column());
  }
}
