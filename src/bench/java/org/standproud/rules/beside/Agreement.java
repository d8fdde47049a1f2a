package org.standproud.rules.beside;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.RuleTrace;

/**
 * Checks that all say the same: kinds by all, and by those that leave a trace truths, distances and
 * severities.
 */
record Agreement(RuleBase base, HandWritten written, OtherEngines others, KieBase kept) {

  void check(Evidence evidence) {
    RuleTrace trace = base.evaluate(evidence);
    Kind[] kinds = written.order.stream().map(c -> trace.card(c.id()).kind()).toArray(Kind[]::new);
    same("by hand", kinds, written.kinds(evidence));
    same("rules from text", kinds, others.drools(kept, evidence, false).kinds());
    same("Easy Rules", kinds, others.easyRules(evidence, false).kinds());
    agree(trace, written.traced(evidence));
    agree(trace, others.drools(kept, evidence, true).traced());
    agree(trace, others.easyRules(evidence, true).traced());
  }

  private void agree(RuleTrace trace, List<HandTrace> traces) {
    Map<String, Severity> severities = written.severities(traces);
    for (int i = 0; i < traces.size(); i++) {
      CardTrace card = trace.card(written.order.get(i).id());
      agree(card, traces.get(i));
      Severity severity = severities.getOrDefault(card.id(), card.card().severity());
      same(card.id() + " severity", severity, card.severity());
    }
  }

  private static void agree(CardTrace card, HandTrace hand) {
    List<ConditionTrace> all =
        Stream.concat(card.scope().stream(), card.conditions().stream()).toList();
    same(card.id(), all.stream().map(ConditionTrace::truth).toArray(Truth[]::new), hand.truths());
    for (int i = 0; i < all.size(); i++) {
      agree(card.id() + " condition " + i, all.get(i).margin(), hand.distances()[i]);
    }
    agree(card.id(), card.margin(), hand.distance());
  }

  private static void agree(String what, @Nullable Margin margin, @Nullable Distance distance) {
    Double ours = margin == null ? null : margin.clearance();
    Double theirs = distance == null ? null : distance.clearance();
    boolean near =
        ours == null || theirs == null
            ? ours == theirs
            : Math.abs(ours - theirs) <= 1e-12 * Math.abs(ours);
    if (!near) {
      throw new IllegalStateException(what + ": " + ours + " and by hand " + theirs);
    }
  }

  private static void same(String what, Object a, Object b) {
    boolean equal = a instanceof Object[] x ? Arrays.equals(x, (Object[]) b) : a.equals(b);
    if (!equal) {
      throw new IllegalStateException("no agreement, " + what);
    }
  }
}
