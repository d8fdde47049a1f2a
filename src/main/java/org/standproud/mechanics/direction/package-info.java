/** Which ways a pass pushes the stock, in steady cutting, along the pass and at first contact. */
@NullMarked
package org.standproud.mechanics.direction;

import org.jspecify.annotations.NullMarked;
