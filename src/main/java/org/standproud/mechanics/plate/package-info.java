/**
 * How the standing stock gives way and rings: a thin plate on an elastic root, by Rayleigh and Ritz
 * with Legendre polynomials. Loads on the stock only; the cutter and the spindle are elsewhere.
 */
@NullMarked
package org.standproud.mechanics.plate;

import org.jspecify.annotations.NullMarked;
