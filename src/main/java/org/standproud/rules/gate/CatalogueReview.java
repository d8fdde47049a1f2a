package org.standproud.rules.gate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.gate.CardWarning.Kind;
import org.standproud.rules.language.Condition;

/**
 * Looks for cards that cannot matter: those that can never hold or act, those made redundant by
 * another card, and unread judgements. It has no false alarms, but does not find everything,
 * because it compares conditions by their form and proves no theorems.
 */
final class CatalogueReview {

  private final List<CompiledCard> cards;
  private final Map<String, CompiledCard> byId = new HashMap<>();
  private final Map<String, CompiledCard> deriving = new HashMap<>();
  private final Set<String> changed = new HashSet<>();
  private final Set<String> read = new HashSet<>();
  private final List<CardWarning> warnings = new ArrayList<>();

  private CatalogueReview(List<CompiledCard> cards) {
    this.cards = cards;
    for (CompiledCard card : cards) {
      byId.put(card.id(), card);
      read.addAll(card.judgements());
      if (card.card().derives() != null) {
        deriving.put(card.card().derives().text(), card);
      }
      if (card.card().change() != null) {
        changed.add(card.card().change().card().text());
      }
    }
  }

  static List<CardWarning> of(List<CompiledCard> cards) {
    CatalogueReview review = new CatalogueReview(cards);
    cards.forEach(review::alone);
    review.pairs();
    return List.copyOf(review.warnings);
  }

  private void alone(CompiledCard card) {
    Written derives = card.card().derives();
    if (derives != null && !read.contains(derives.text())) {
      warn(Kind.JUDGEMENT_UNREAD, card, derives, "no card reads this judgement");
    }
    List<NormalizedCondition> claims = withJudgements(card);
    String clash = clash(claims);
    if (clash != null) {
      warn(Kind.NEVER_HOLDS, card, first(card), "the card can never hold: " + clash);
    }
    CompiledCard other =
        card.card().change() == null ? null : byId.get(card.card().change().card().text());
    if (clash == null && other != null && card.card().change() != null) {
      List<NormalizedCondition> both = new ArrayList<>(claims);
      both.addAll(withJudgements(other));
      String apart = clash(both);
      if (apart != null) {
        Written at = card.card().change().card();
        warn(Kind.NEVER_ACTS, card, at, "the two cards can never hold together: " + apart);
      }
    }
  }

  private static Written first(CompiledCard card) {
    return card.card().when().isEmpty() ? card.card().id() : card.card().when().get(0);
  }

  private static List<NormalizedCondition> claims(CompiledCard card) {
    List<NormalizedCondition> claims = new ArrayList<>();
    card.scope().forEach(c -> NormalizedCondition.of(c).forEach(claims::add));
    card.when().forEach(c -> NormalizedCondition.of(c).forEach(claims::add));
    return claims;
  }

  /**
   * The normalized conditions of a card with those of every judgement it needs, and the ranges of
   * its facts.
   */
  private List<NormalizedCondition> withJudgements(CompiledCard card) {
    List<NormalizedCondition> claims = new ArrayList<>();
    add(card, claims, new HashSet<>());
    return claims;
  }

  private void add(CompiledCard card, List<NormalizedCondition> claims, Set<String> seen) {
    claims.addAll(claims(card));
    card.facts().forEach(f -> NormalizedCondition.range(f).forEach(claims::add));
    for (Condition condition : card.when()) {
      if (condition instanceof Condition.Judged judged && seen.add(judged.name())) {
        CompiledCard source = deriving.get(judged.name());
        if (source != null) {
          add(source, claims, seen);
        }
      }
    }
  }

  private static @Nullable String clash(List<NormalizedCondition> claims) {
    for (int i = 0; i < claims.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (claims.get(i).contradicts(claims.get(j))) {
          return claims.get(j).key() + " and " + claims.get(i).key();
        }
      }
    }
    return null;
  }

  private record Weighed(CompiledCard card, List<NormalizedCondition> claims, Set<String> facts) {}

  private void pairs() {
    List<Weighed> flagging = new ArrayList<>();
    Map<String, List<Weighed>> same = new TreeMap<>();
    for (CompiledCard card : cards) {
      Set<String> facts = new HashSet<>(card.judgements());
      card.facts().forEach(f -> facts.add(f.name()));
      Weighed weighed = new Weighed(card, claims(card), facts);
      String key =
          weighed.claims.stream()
              .map(NormalizedCondition::key)
              .sorted()
              .distinct()
              .toList()
              .toString();
      same.computeIfAbsent(key, k -> new ArrayList<>()).add(weighed);
      if (card.card().flags()) {
        flagging.add(weighed);
      }
    }
    same.values().forEach(this::twins);
    for (Weighed card : flagging) {
      for (Weighed other : flagging) {
        shadow(card, other);
      }
    }
  }

  private void twins(List<Weighed> twins) {
    CompiledCard one = twins.get(0).card;
    for (Weighed twin : twins.subList(1, twins.size())) {
      boolean graver =
          twin.card.card().flags()
              && one.card().flags()
              && twin.card.card().severity() != one.card().severity();
      if (!graver && role(twin.card).equals(role(one))) {
        String message = "the scope and conditions are those of " + one.id();
        warn(Kind.SAME_CONDITIONS, twin.card, twin.card.card().id(), message);
      }
    }
  }

  /** Cards of one role are interchangeable: two that flag, or two that change one finding. */
  private static String role(CompiledCard card) {
    return card.card().change() != null
        ? "changes " + card.card().change().card().text()
        : card.card().derives() != null ? "derives" : "flags";
  }

  /**
   * A finding that another card can lower shadows nothing. A card that reads more facts adds
   * something and is not shadowed.
   */
  private void shadow(Weighed card, Weighed other) {
    boolean graver = other.card.card().severity().compareTo(card.card.card().severity()) > 0;
    if (graver
        && !changed.contains(other.card.id())
        && card.facts.equals(other.facts)
        && other.claims.stream()
            .allMatch(needed -> card.claims.stream().anyMatch(needed::followsFrom))) {
      String message =
          "whenever this card flags, " + other.card.id() + " flags too and is more severe";
      warn(Kind.SHADOWED, card.card, card.card.card().id(), message);
    }
  }

  private void warn(Kind kind, CompiledCard card, Written at, String message) {
    warnings.add(CardWarning.at(kind, card, at, message));
  }
}
