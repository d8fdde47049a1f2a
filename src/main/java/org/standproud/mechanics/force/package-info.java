/**
 * Cutting force on the work, by tooth angle and along the pass, in the frame of the vise.
 *
 * <p>On the work a tooth pushes along its own velocity (tangential) and away from the cutter axis
 * (radial); on the cutter it is the other way round. Bands are computed, not guessed: every pass is
 * run at the likely inputs and at the low and high ends of the chip (feed, material, wear) with
 * even and uneven teeth, each with the low and high split between tangential, radial and axial.
 */
@NullMarked
package org.standproud.mechanics.force;

import org.jspecify.annotations.NullMarked;
