/**
 * Vibration of the stock under the cutter: forced at the tooth-passing harmonics, and self-excited
 * (chatter).
 *
 * <p>Robust: the forced answer is a sum over modes and harmonics. The limit depth is kept as its
 * inverse, which passes smoothly through zero where a frequency cannot chatter. Not robust: damping
 * and the modes of an unmeasured spindle, known only as wide bands, so that limit depths are known
 * to a factor of three; arcs so short that the cut is a row of blows, which get extra lobes that a
 * zeroth-order model does not have; a swing above the limit of chatter, where the linear answer no
 * longer holds.
 *
 * <p>Cost: a limit depth tries a grid of frequencies that is denser near the modes, for every draw;
 * it is the dearest part of a joint evidence.
 */
@NullMarked
package org.standproud.mechanics.vibration;

import org.jspecify.annotations.NullMarked;
