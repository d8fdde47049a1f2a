package org.standproud.api.rulebase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.publishing.Proposal;

/**
 * A summary line of a proposal.
 *
 * @param id its id
 * @param proposer its author
 * @param note the reason
 * @param time time of the proposal
 * @param onto the revision it is based on
 * @param self link to it
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
