/** The closed list of units in which a caller may speak, and the SI units behind them. */
@NullMarked
package org.standproud.setup.units;

import org.jspecify.annotations.NullMarked;
