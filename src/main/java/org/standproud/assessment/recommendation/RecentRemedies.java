package org.standproud.assessment.recommendation;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.standproud.advice.remedy.Remedies;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * The remedies asked for last: whoever asks for them asks for the other holds next, which hang on
 * whether the vise can be made right. Holds a bounded number and drops the one unused longest; the
 * answer is the same with or without it.
 */
@Component
public final class RecentRemedies {

  private static final int HELD = 32;

  private final Map<Asked, Remedies> held =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Remedies> eldest) {
          return size() > HELD;
        }
      };

  /** What remedies depend on; a catalogue that is read again is another one. */
  private record Asked(Setup setup, String ruleBase, int shop) {}

  RecentRemedies() {}

  /** The remedies of a set-up. */
  public Remedies of(Setup setup, RuleBase ruleBase, Catalogue shop) {
    Asked asked = new Asked(setup, ruleBase.revision().id(), System.identityHashCode(shop));
    synchronized (held) {
      Remedies known = held.get(asked);
      if (known != null) {
        return known;
      }
    }
    // Searched outside the lock: two callers may both search, and find the same.
    Remedies remedies = Remedies.of(setup, ruleBase, shop);
    synchronized (held) {
      held.put(asked, remedies);
    }
    return remedies;
  }
}
