/** Whether the machine reaches the pass at all, and what would touch what on the way. */
@NullMarked
package org.standproud.mechanics.reach;

import org.jspecify.annotations.NullMarked;
