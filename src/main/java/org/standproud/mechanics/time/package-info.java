/** How long a pass is and how long it takes. */
@NullMarked
package org.standproud.mechanics.time;

import org.jspecify.annotations.NullMarked;
