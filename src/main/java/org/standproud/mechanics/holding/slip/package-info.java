/** Slip, lift, pitch, yaw and tip of stock between two jaws, each alone and all together. */
@NullMarked
package org.standproud.mechanics.holding.slip;

import org.jspecify.annotations.NullMarked;
