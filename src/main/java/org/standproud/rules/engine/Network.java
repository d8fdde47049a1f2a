package org.standproud.rules.engine;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;
import org.kie.api.runtime.rule.FactHandle;
import org.standproud.rules.card.Levels;

/**
 * The cards as a Drools network. A set-up is inserted as one object, its {@link Evaluation};
 * judgements are inserted logically, so that they are retracted with their support, and so are the
 * findings that a card may change; a card that reads judgements joins on them; a card that changes
 * a finding joins on the finding. A constraint queries the evaluation, which calls the condition
 * objects of the card: there is no rule text and nothing is compiled.
 */
final class Network {

  /** More firings than this a card would mean a cycle, which the card compiler refuses. */
  private static final int FIRINGS_A_CARD = 8;

  private static final Object BUILDING = new Object();

  /** Pooled sessions: by measurement, judging a set-up takes two thirds of the time. */
  private final KieSessionsPool sessions;

  private final int maxFirings;

  Network(List<CompiledCard> cards, Levels levels) {
    ModelImpl model = new ModelImpl();
    Map<String, CompiledCard> byId = new HashMap<>();
    Set<String> changed = new HashSet<>();
    for (CompiledCard card : cards) {
      byId.put(card.id(), card);
      if (card.card().change() != null) {
        changed.add(card.card().change().card().text());
      }
    }
    Depth depth = new Depth(cards);
    for (int i = 0; i < cards.size(); i++) {
      new CardRules(model, cards.get(i), i, depth).add(byId, levels, changed);
    }
    maxFirings = FIRINGS_A_CARD * (cards.size() + 1);
    // Parallel builds of the engine are known to interfere.
    synchronized (BUILDING) {
      sessions = KieBaseBuilder.createKieBaseFromModel(model).newKieSessionsPool(1);
    }
  }

  /**
   * Runs one session, replacing the evaluation of the previous run each time.
   *
   * @throws IllegalStateException if the cards form a cycle
   */
  void run(List<? extends Evaluation> successive) {
    KieSession session = sessions.newKieSession();
    FactHandle handle = null;
    for (Evaluation evaluation : successive) {
      if (handle == null) {
        handle = session.insert(evaluation);
      } else {
        session.update(handle, evaluation);
      }
      if (session.fireAllRules(maxFirings) == maxFirings) {
        throw new IllegalStateException("the cards do not come to rest");
      }
    }
    // A session that failed is not returned to the pool.
    session.dispose();
  }
}
