package org.standproud.mechanics.evidence.stage;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.mechanics.sampling.LettingGo;

/**
 * The evidence of a set-up with what its draws say of the hold as a whole. All of it is of the same
 * draws.
 *
 * @param evidence the facts
 * @param chance how likely it is to hold and what decides it most; null if nothing is cut or the
 *     hold could not be worked out
 * @param lettingGo in which draws it lets go and how; null where the chance is
 */
public record JointEvidence(
    Evidence evidence, @Nullable HoldingChance chance, @Nullable LettingGo lettingGo) {}
