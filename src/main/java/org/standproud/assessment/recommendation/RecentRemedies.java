package org.standproud.assessment.recommendation;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.springframework.stereotype.Component;
import org.standproud.advice.remedy.Remedies;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/**
 * A bounded cache of remedies: a caller often asks for the other holds next, which depend on
 * whether the set-up in the vise can be fixed. Concurrent requests for the same set-up share one
 * search. The answer is the same with or without it.
 */
@Component
public final class RecentRemedies {

  private static final int HELD = 32;

  private final Cache<Asked, Remedies> held = Caffeine.newBuilder().maximumSize(HELD).build();

  /** The cache key; a reloaded catalogue is another one. */
  private record Asked(Setup setup, String ruleBase, int shop) {}

  RecentRemedies() {}

  /** The remedies of a set-up. */
  public Remedies of(Setup setup, RuleBase ruleBase, Catalogue shop) {
    Asked asked = new Asked(setup, ruleBase.revision().id(), System.identityHashCode(shop));
    return held.get(asked, missing -> Remedies.of(setup, ruleBase, shop));
  }
}
