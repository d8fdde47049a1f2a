package org.standproud.rules.beside;

import java.util.BitSet;
import java.util.List;
import org.drools.model.codegen.ExecutableModelProject;
import org.jeasy.rules.api.Facts;
import org.jeasy.rules.api.Rules;
import org.jeasy.rules.core.DefaultRulesEngine;
import org.jeasy.rules.core.RuleBuilder;
import org.kie.api.KieBase;
import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieSession;
import org.kie.internal.utils.KieHelper;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.trace.CardKind;

/**
 * The same conditions under other engines, used as their introductions show. Each rule calls the
 * compiled conditions in turn as the plain loop does, so that what differs is the engine alone;
 * they find kinds, or leave the trace that the loop leaves.
 */
public final class OtherEngines {

  private final CardLoop loop;
  private final String text;
  private final Rules easy = new Rules();
  private final DefaultRulesEngine easyEngine = new DefaultRulesEngine();

  OtherEngines(CardLoop loop) {
    this.loop = loop;
    this.text = drl();
    for (int i = 0; i < loop.size(); i++) {
      easy.register(easyRule(i));
    }
  }

  /** What the rules of an engine work on and write to. */
  public static final class Work {
    private final LoopEvaluation evaluation;
    private final BitSet holding = new BitSet();
    private final BitSet fired = new BitSet();

    Work(CardLoop loop, Evidence evidence, boolean traced) {
      evaluation = loop.evaluation(evidence, traced);
    }

    /** Whether a card holds, or may hold, in some draw. */
    public boolean holds(int card) {
      boolean holds = !evaluation.judge(card).isFalse();
      holding.set(card, holds);
      return holds;
    }

    /** Notes that the rule of a card fired. */
    public void fire(int card) {
      fired.set(card);
    }

    /** Traces of all cards in their order. */
    List<LoopTrace> traces() {
      requireFired();
      return evaluation.traces();
    }

    /** Kinds of all cards in their order. */
    List<CardKind> kinds() {
      requireFired();
      return evaluation.kinds();
    }

    private void requireFired() {
      if (!fired.equals(holding)) {
        throw new IllegalStateException("rules that fired and cards that hold differ");
      }
    }
  }

  /** The order in which cards are to be looked at, judgements first. */
  private String drl() {
    StringBuilder drl = new StringBuilder("package cards;\n");
    drl.append("import " + Work.class.getCanonicalName() + ";\n");
    drl.append("import " + Turn.class.getCanonicalName() + ";\n");
    for (int i = 0; i < loop.size(); i++) {
      drl.append("rule \"card " + i + "\" salience " + -i + " when $w : Work() ");
      drl.append("Turn(open) eval($w.holds(" + i + ")) then $w.fire(" + i + "); end\n");
    }
    return drl.toString();
  }

  /** Lets the rules look at the work once all of it is there. */
  public static final class Turn {
    /** Whether it is open. */
    public boolean isOpen() {
      return true;
    }
  }

  /** Compiles the text of the rules. */
  KieBase container() {
    return new KieHelper().addContent(text, ResourceType.DRL).build(ExecutableModelProject.class);
  }

  /** Work done by a session of the rules from text. */
  Work drools(KieBase base, Evidence evidence, boolean traced) {
    KieSession session = base.newKieSession();
    try {
      Work work = new Work(loop, evidence, traced);
      session.insert(work);
      session.insert(new Turn());
      session.fireAllRules();
      return work;
    } finally {
      session.dispose();
    }
  }

  private static org.jeasy.rules.api.Rule easyRule(int i) {
    return new RuleBuilder()
        .name("card " + i)
        .priority(i)
        .when(facts -> facts.<Work>get("work").holds(i))
        .then(facts -> facts.<Work>get("work").fire(i))
        .build();
  }

  /** Work done by Easy Rules. */
  Work easyRules(Evidence evidence, boolean traced) {
    Facts facts = new Facts();
    Work work = new Work(loop, evidence, traced);
    facts.put("work", work);
    easyEngine.fire(easy, facts);
    return work;
  }
}
