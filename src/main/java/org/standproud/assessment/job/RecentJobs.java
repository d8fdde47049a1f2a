package org.standproud.assessment.job;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.springframework.stereotype.Component;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;

/**
 * A bounded cache of planned jobs: a page is reloaded and printed. Concurrent requests for the same
 * job share one search. The answer is the same with or without it.
 */
@Component
public final class RecentJobs {

  private static final int HELD = 16;

  private final Cache<Asked, JobDocument> held = Caffeine.newBuilder().maximumSize(HELD).build();

  /** The cache key; a reloaded catalogue is another one. */
  private record Asked(JsonNode request, String ruleBase, int shop) {}

  RecentJobs() {}

  /**
   * The route of a job.
   *
   * @param request the request
   * @param catalogue the catalogue
   * @param ruleBase the rule base
   * @throws JobRejectedException if it does not describe a job, or nothing on hand reaches a face
   */
  public JobDocument of(JsonNode request, Catalogue catalogue, RuleBase ruleBase) {
    Asked asked =
        new Asked(request, ruleBase.revision().id(), System.identityHashCode(catalogue));
    return held.get(asked, missing -> JobDocument.of(request, catalogue, ruleBase));
  }
}
