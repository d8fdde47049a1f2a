/**
 * A cut on standing stock put together: what the cut asks of the hold, what the hold is to the
 * plate, and what both are to chatter.
 */
@NullMarked
package org.standproud.mechanics.coupling;

import org.jspecify.annotations.NullMarked;
