package org.standproud.rules.beside;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;

/**
 * Checks that all come to the same: kinds, draws, severities and findings by all, and by those that
 * leave a trace the draws and the margin of every condition.
 */
record Agreement(RuleBase base, CardLoop loop, OtherEngines others, KieBase kept) {

  void check(Evidence evidence) {
    RuleKinds judged = base.kinds(evidence);
    List<CardKind> kinds =
        loop.order.stream()
            .map(c -> judged.cards().get(base.cards().indexOf(base.card(c.id()))))
            .toList();
    same("kinds of the loop", kinds, loop.kinds(evidence));
    same("kinds of rules from text", kinds, others.drools(kept, evidence, false).kinds());
    same("kinds of Easy Rules", kinds, others.easyRules(evidence, false).kinds());
    RuleTrace trace = base.evaluate(evidence);
    agree(trace, loop.traced(evidence));
    agree(trace, others.drools(kept, evidence, true).traces());
    agree(trace, others.easyRules(evidence, true).traces());
  }

  private void agree(RuleTrace trace, List<LoopTrace> traces) {
    for (int i = 0; i < traces.size(); i++) {
      agree(trace.card(loop.order.get(i).id()), traces.get(i));
    }
  }

  private static void agree(CardTrace card, LoopTrace one) {
    CardKind kind =
        new CardKind(card.id(), card.kind(), card.draws(), card.severity(), card.isFinding());
    same(card.id(), kind, one.outcome());
    List<ConditionTrace> all =
        card.kind() == Kind.NOT_APPLICABLE
            ? card.scope()
            : Stream.concat(card.scope().stream(), card.conditions().stream()).toList();
    same(card.id() + " conditions", all.size(), one.conditions().size());
    for (int i = 0; i < all.size(); i++) {
      ConditionTrace other = one.conditions().get(i);
      same(card.id() + " condition " + i, all.get(i).draws(), other.draws());
      same(card.id() + " margin " + i, adverse(all.get(i).margin()), adverse(other.margin()));
    }
    same(card.id() + " margin", adverse(card.margin()), adverse(one.margin()));
  }

  private static @Nullable Double adverse(@Nullable Margin margin) {
    return margin == null ? null : margin.adverse();
  }

  private static void same(String what, @Nullable Object a, @Nullable Object b) {
    if (!Objects.equals(a, b)) {
      throw new IllegalStateException("no agreement, " + what + ": " + a + " and " + b);
    }
  }
}
