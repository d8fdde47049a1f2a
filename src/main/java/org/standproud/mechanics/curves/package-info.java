/** What a drawing of one set-up plots: series of points in SI units, each with its band. */
@NullMarked
package org.standproud.mechanics.curves;

import org.jspecify.annotations.NullMarked;
