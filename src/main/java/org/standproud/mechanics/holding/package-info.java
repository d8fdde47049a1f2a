/**
 * Capacity of a hold: margins against slip, tip and lift, and the stiffness of the root of the
 * stock, each as a band.
 *
 * <p>Robust: limits are roots of monotonic statics, found inside a bracket by Brent's method or
 * bracketed Newton steps. Friction couples that help are counted in none of the margins. Not
 * robust: the stiffness of a root that is about to tip, and everything about a single high spot
 * beyond its hinge.
 *
 * <p>Cost: a limit is some tens of evaluations of the statics; corners of friction and force are
 * tried in turn.
 */
@NullMarked
package org.standproud.mechanics.holding;

import org.jspecify.annotations.NullMarked;
