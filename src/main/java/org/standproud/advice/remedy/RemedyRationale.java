package org.standproud.advice.remedy;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.standproud.advice.DecidingNumber;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.Judged;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Margin;
import org.standproud.setup.Setup;
import org.standproud.setup.units.QuantityKind;

/**
 * Explains a change in two sentences: what to do, and what was wrong without it, with the deciding
 * number before and after, and its limit. Of the cards that it clears, it uses the one that stays
 * nearest to its limit.
 */
final class RemedyRationale {

  private final Setup setup;
  private final Judged base;
  private final RuleBase ruleBase;
  private final Wording wording;
  private final Map<String, CardTrace> before = new HashMap<>();

  RemedyRationale(Setup setup, Judged base, RuleBase ruleBase) {
    this.setup = setup;
    this.base = base;
    this.ruleBase = ruleBase;
    this.wording = new Wording(setup.units());
  }

  /** A card before and after. */
  private record Turned(CardTrace was, CardTrace is, double reserve) {}

  /**
   * The explanation of a change.
   *
   * @param proved the change
   * @param cleared ids of the cleared cards
   */
  String of(ProvenChange proved, Set<String> cleared) {
    String what = ChangeWording.of(setup, proved) + ".";
    Optional<Turned> nearest =
        cleared.stream()
            .map(card -> turned(card, proved))
            .min(Comparator.comparingDouble(Turned::reserve));
    return nearest.map(turned -> what + " " + because(turned)).orElse(what);
  }

  private Turned turned(String card, ProvenChange proved) {
    CardTrace was = before.computeIfAbsent(card, id -> ruleBase.evaluate(base.evidence(), id));
    CardTrace is = ruleBase.evaluate(proved.judged().evidence(), card);
    Margin margin = is.margin();
    double reserve =
        margin == null || was.margin() == null || margin.threshold() <= 0
            ? Double.POSITIVE_INFINITY
            : margin.adverse() / margin.threshold();
    return new Turned(was, is, reserve);
  }

  private String because(Turned turned) {
    String why = firstSentence(turned.was().card().why());
    Margin was = turned.was().margin();
    Margin is = turned.is().margin();
    if (was == null || is == null || is.dimension() == null) {
      return why + ".";
    }
    QuantityKind kind = DecidingNumber.kind(turned.was(), is.dimension());
    return why
        + ": the "
        + is.comparison().replaceAll(" is (more|less|not) .*", "").replaceFirst("^the ", "")
        + " is "
        + DecidingNumber.words(turned.was(), was, wording)
        + " now and "
        + DecidingNumber.words(turned.is(), is, wording)
        + " then, where "
        + wording.words(kind, is.threshold())
        + " is the limit.";
  }

  private static String firstSentence(String text) {
    List<String> sentences = List.of(text.strip().split("(?<=[.!?])\\s+"));
    return sentences.get(0).replaceAll("[.]$", "");
  }
}
