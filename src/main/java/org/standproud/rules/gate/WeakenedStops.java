package org.standproud.rules.gate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.CardWarning.Kind;
import org.standproud.rules.language.Condition;

/**
 * The stops of one rule base that stop less in a later one: removed, of a lower severity, with
 * stricter conditions, or lowered by another card in more cases. Conditions are compared by their
 * form, so a change that cannot be shown to keep every stop counts as weakening it.
 */
public final class WeakenedStops {

  private final Map<String, CompiledCard> before;
  private final Map<String, CompiledCard> after;
  private final Set<String> changedJudgements;
  private final List<CardWarning> weakened = new ArrayList<>();

  private WeakenedStops(RuleBase before, RuleBase after) {
    this.before = byId(before);
    this.after = byId(after);
    this.changedJudgements = changedJudgements();
  }

  /**
   * Compares two rule bases.
   *
   * @param before the rule base in service
   * @param after the one that would replace it
   * @return one warning for each way in which a stop is weakened; the card of a warning is the stop
   */
  public static List<CardWarning> between(RuleBase before, RuleBase after) {
    WeakenedStops stops = new WeakenedStops(before, after);
    stops.before.values().stream().filter(WeakenedStops::stops).forEach(stops::alone);
    stops.after.values().forEach(stops::lowering);
    return List.copyOf(stops.weakened);
  }

  private static Map<String, CompiledCard> byId(RuleBase base) {
    Map<String, CompiledCard> cards = new TreeMap<>();
    base.cards().forEach(card -> cards.put(card.id(), card));
    return cards;
  }

  /** Whether the card is a stop or raises the finding of another card to one. */
  private static boolean stops(CompiledCard card) {
    SeverityChange change = card.card().change();
    return change == null
        ? card.card().flags() && card.card().severity() == Severity.STOP
        : change.to() == Severity.STOP;
  }

  private void alone(CompiledCard was) {
    CompiledCard is = after.get(was.id());
    if (is == null) {
      warn(was.id(), was.card(), was.card().id(), "the stop " + was.id() + " is taken away");
      return;
    }
    if (!stops(is)) {
      String now = is.card().flags() ? "a " + is.card().severity().words() : "no finding";
      warn(was.id(), is.card(), is.card().id(), "the stop " + was.id() + " becomes " + now);
    } else if (!Optional.ofNullable(target(was)).equals(Optional.ofNullable(target(is)))) {
      warn(was.id(), is.card(), is.card().id(), was.id() + " no longer stops what it stopped");
    }
    narrowed(was, is);
    judgements(was, is, "the stop " + was.id());
  }

  private static @Nullable String target(CompiledCard card) {
    SeverityChange change = card.card().change();
    return change == null ? null : change.card().text();
  }

  private void narrowed(CompiledCard was, CompiledCard is) {
    List<NormalizedCondition> old = claims(was);
    for (int i = 0; i < is.scope().size(); i++) {
      narrowed(was, is, is.scope().get(i), is.card().id(), old);
    }
    for (int i = 0; i < is.when().size(); i++) {
      narrowed(was, is, is.when().get(i), is.card().when().get(i), old);
    }
  }

  private void narrowed(
      CompiledCard was,
      CompiledCard is,
      Condition condition,
      Written at,
      List<NormalizedCondition> old) {
    if (!NormalizedCondition.of(condition)
        .allMatch(claim -> old.stream().anyMatch(claim::followsFrom))) {
      warn(
          was.id(),
          is.card(),
          at,
          "the stop " + was.id() + " may flag less: now only if " + condition.toWords());
    }
  }

  private void judgements(CompiledCard was, CompiledCard is, String which) {
    Set<String> read = new TreeSet<>(was.judgements());
    read.addAll(is.judgements());
    read.retainAll(changedJudgements);
    for (String judgement : read) {
      String message = which + " reads the judgement \"" + judgement + "\", which is derived anew";
      warn(targetOrOwn(is), is.card(), is.card().id(), message);
    }
  }

  private static String targetOrOwn(CompiledCard card) {
    String target = target(card);
    return target == null || stops(card) ? card.id() : target;
  }

  /** A card that lowers a stop in cases in which none lowered it before. */
  private void lowering(CompiledCard is) {
    SeverityChange change = is.card().change();
    CompiledCard stop = change == null ? null : before.get(change.card().text());
    if (change == null || stop == null || change.to() == Severity.STOP || !wasStop(stop)) {
      return;
    }
    CompiledCard was = before.get(is.id());
    SeverityChange old = was == null ? null : was.card().change();
    String lowers = "the stop " + stop.id() + " is lowered to " + change.to().words();
    if (was == null
        || old == null
        || !old.card().text().equals(stop.id())
        || old.to().compareTo(change.to()) > 0
        || change.overrides() && !old.overrides()) {
      warn(stop.id(), is.card(), is.card().id(), lowers + " by " + is.id() + always(is, stop));
      return;
    }
    List<NormalizedCondition> now = claims(is);
    if (!claims(was).stream().allMatch(claim -> now.stream().anyMatch(claim::followsFrom))) {
      String message = lowers + " by " + is.id() + " in more cases than before";
      warn(stop.id(), is.card(), is.card().id(), message + always(is, stop));
    }
    judgements(was, is, is.id() + ", which lowers the stop " + stop.id() + ",");
  }

  private boolean wasStop(CompiledCard card) {
    return stops(card)
        || before.values().stream()
            .anyMatch(other -> stops(other) && card.id().equals(target(other)));
  }

  /** Whether a card that lowers a stop holds wherever the stop holds. */
  private static String always(CompiledCard lowering, CompiledCard stop) {
    List<NormalizedCondition> given = new ArrayList<>(claims(stop));
    lowering.facts().forEach(fact -> NormalizedCondition.range(fact).forEach(given::add));
    boolean always =
        claims(lowering).stream().allMatch(claim -> given.stream().anyMatch(claim::followsFrom));
    return always ? ", always" : "";
  }

  private static List<NormalizedCondition> claims(CompiledCard card) {
    return Stream.concat(card.scope().stream(), card.when().stream())
        .flatMap(NormalizedCondition::of)
        .toList();
  }

  /** Judgements derived differently, or that depend on one that is. */
  private Set<String> changedJudgements() {
    Map<String, CompiledCard> was = deriving(before);
    Map<String, CompiledCard> is = deriving(after);
    Set<String> all = new TreeSet<>(was.keySet());
    all.addAll(is.keySet());
    Set<String> changed = new HashSet<>();
    all.stream().filter(j -> !keys(was.get(j)).equals(keys(is.get(j)))).forEach(changed::add);
    boolean more = true;
    while (more) {
      more = false;
      for (String judgement : all) {
        CompiledCard card = is.get(judgement);
        more |=
            card != null
                && card.judgements().stream().anyMatch(changed::contains)
                && changed.add(judgement);
      }
    }
    return changed;
  }

  private static Map<String, CompiledCard> deriving(Map<String, CompiledCard> cards) {
    Map<String, CompiledCard> deriving = new HashMap<>();
    for (CompiledCard card : cards.values()) {
      if (card.card().derives() != null) {
        deriving.put(card.card().derives().text(), card);
      }
    }
    return deriving;
  }

  private static Set<String> keys(@Nullable CompiledCard card) {
    Set<String> keys = new TreeSet<>();
    if (card != null) {
      claims(card).forEach(claim -> keys.add(claim.key()));
    }
    return keys;
  }

  private void warn(String stop, Card card, Written at, String message) {
    weakened.add(new CardWarning(Kind.STOP_WEAKENED, stop, CardError.at(card.file(), at, message)));
  }
}
