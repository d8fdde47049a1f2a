package org.standproud.rules.beside;

import java.util.Arrays;
import java.util.List;
import org.drools.model.codegen.ExecutableModelProject;
import org.jeasy.rules.api.Facts;
import org.jeasy.rules.api.Rules;
import org.jeasy.rules.core.DefaultRulesEngine;
import org.jeasy.rules.core.RuleBuilder;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieSession;
import org.kie.internal.utils.KieHelper;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.Kind;

/**
 * The same conditions under other engines, used as their introductions show. Each rule calls the
 * hand-written condition, so that what differs is the engine alone; they find kinds, or leave the
 * trace that plain Java leaves.
 */
public final class OtherEngines {

  private final HandWritten written;
  private final String text;
  private final Rules easy = new Rules();
  private final DefaultRulesEngine easyEngine = new DefaultRulesEngine();

  OtherEngines(HandWritten written) {
    this.written = written;
    this.text = drl();
    for (int i = 0; i < written.cards.length; i++) {
      easy.register(easyRule(i));
    }
  }

  /** What the rules of an engine work on and write to. */
  public static final class Work {
    private final HandWritten written;
    private final Case facts;
    private final Truth[] truths;
    private final @Nullable HandTrace @Nullable [] traces;
    private final boolean[] fired;

    Work(HandWritten written, Evidence evidence, boolean traced) {
      this.written = written;
      facts = written.laidOut(evidence);
      truths = new Truth[written.cards.length];
      traces = traced ? new HandTrace[truths.length] : null;
      fired = new boolean[truths.length];
    }

    /** Whether a card holds, may hold or cannot be judged. */
    public boolean holds(int card) {
      if (traces == null) {
        truths[card] = written.judge(card, facts);
      } else {
        traces[card] = written.trace(card, facts);
        truths[card] = traces[card].truth();
      }
      return truths[card] != Truth.FALSE;
    }

    /** Notes that the rule of a card fired. */
    public void fire(int card) {
      fired[card] = true;
    }

    /** Traces of all cards in their order. */
    List<HandTrace> traced() {
      return Arrays.asList(traces);
    }

    Kind[] kinds() {
      Kind[] kinds = new Kind[truths.length];
      for (int i = 0; i < kinds.length; i++) {
        kinds[i] = written.kind(i, facts, fired[i] ? truths[i] : Truth.FALSE);
      }
      return kinds;
    }
  }

  /** The order in which cards are to be looked at, judgements first. */
  private String drl() {
    StringBuilder drl = new StringBuilder("package cards;\n");
    drl.append("import " + Work.class.getCanonicalName() + ";\n");
    drl.append("import " + Turn.class.getCanonicalName() + ";\n");
    for (int i = 0; i < written.cards.length; i++) {
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
      Work work = new Work(written, evidence, traced);
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
    Work work = new Work(written, evidence, traced);
    facts.put("work", work);
    easyEngine.fire(easy, facts);
    return work;
  }
}
