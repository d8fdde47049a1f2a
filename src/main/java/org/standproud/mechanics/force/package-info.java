/**
 * Cutting force on the work, by tooth angle and along the pass, in the frame of the vise.
 *
 * <p>On the work a tooth pushes along its own velocity (tangential) and away from the cutter axis
 * (radial); on the cutter it is the other way round. Bands are computed, not guessed: every pass is
 * run at the likely inputs and at the low and high ends of the chip (feed, material, wear) with
 * even and uneven teeth, each with the low and high split between tangential, radial and axial.
 *
 * <p>Robust: closed formulas summed over fixed angles and places; nothing iterates, so every input
 * in range gives a finite force. Chips below the range of Kienzle's law count with the floored
 * chip, which is the most force. Not robust: published coefficients outside their stock and cutter,
 * which widen the band, and the ends of a pass, which are run at the lightest and heaviest case
 * only.
 *
 * <p>Cost: one sweep of a revolution for each case and place. {@link DrawnForces} shares the sweep
 * between draws.
 */
@NullMarked
package org.standproud.mechanics.force;

import org.jspecify.annotations.NullMarked;
