/**
 * Clamping force from the torque on the screw of a vise, and from a practice band where nothing is
 * known.
 */
@NullMarked
package org.standproud.mechanics.holding.screw;

import org.jspecify.annotations.NullMarked;
