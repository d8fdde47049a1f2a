/** How likely a hold is to hold, by seeded sampling, and which unknown is worth measuring first. */
@NullMarked
package org.standproud.mechanics.sampling;

import org.jspecify.annotations.NullMarked;
