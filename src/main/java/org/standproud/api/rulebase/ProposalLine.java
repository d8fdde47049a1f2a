package org.standproud.api.rulebase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.publishing.Proposal;

/**
 * A proposal in short.
 *
 * @param id its id
 * @param proposer who proposes it
 * @param note why
 * @param time when
 * @param onto the revision it was written against
 * @param self where to find it
 */
record ProposalLine(
    String id, String proposer, String note, Instant time, @Nullable String onto, String self) {

  static ProposalLine of(Proposal proposal) {
    return new ProposalLine(
        proposal.id(),
        proposal.proposer(),
        proposal.note(),
        proposal.time(),
        proposal.onto(),
        "/v1/rule-base/proposals/" + proposal.id());
  }
}
