/**
 * What is proposed: the stock, how it is held, the machine, the cutter and the cut, in SI units.
 */
@NullMarked
package org.standproud.setup;

import org.jspecify.annotations.NullMarked;
