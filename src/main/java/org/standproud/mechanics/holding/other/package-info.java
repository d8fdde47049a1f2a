/**
 * Statics of the other ways to hold the same stock: against an angle plate, against the side of the
 * vise, flat on the table.
 */
@NullMarked
package org.standproud.mechanics.holding.other;

import org.jspecify.annotations.NullMarked;
