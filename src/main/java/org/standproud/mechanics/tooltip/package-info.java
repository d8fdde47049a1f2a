/** Dynamics of the cutting end: cutter, holder and spindle coupled. */
@NullMarked
package org.standproud.mechanics.tooltip;

import org.jspecify.annotations.NullMarked;
