/**
 * The published facts of a set-up: their names, units, meanings and the values computed for one
 * set-up.
 */
@NullMarked
package org.standproud.mechanics.evidence;

import org.jspecify.annotations.NullMarked;
