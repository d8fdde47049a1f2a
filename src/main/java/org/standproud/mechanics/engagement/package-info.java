/** Where the teeth of a cutter meet the stock along a pass, and how thick the chip is there. */
@NullMarked
package org.standproud.mechanics.engagement;

import org.jspecify.annotations.NullMarked;
