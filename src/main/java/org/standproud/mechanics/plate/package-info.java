/**
 * Deflection and vibration of the standing stock: a thin plate on an elastic root, by Rayleigh and
 * Ritz with Legendre polynomials. Loads on the stock only; the cutter and the spindle are
 * elsewhere.
 *
 * <p>Robust: the polynomials are orthogonal, so the matrices stay well conditioned, and the direct
 * factorizations need no start value. Ritz stiffens the plate: frequencies come out high and
 * deflections low, by the errors that each class states; the dip that polynomials miss under a
 * point load is added. Not robust: a foot near tipping, whose stiffness goes to zero; the evidence
 * then says that the set-up lets go instead of giving a number. Plates as thick as they are high
 * are outside the model.
 *
 * <p>Cost: what the sizes alone decide is computed once for a plate and takes most of the time, so
 * a second hold of the same plate costs some tens of microseconds. {@link RememberedPlates} keeps
 * the last ones.
 */
@NullMarked
package org.standproud.mechanics.plate;

import org.jspecify.annotations.NullMarked;
