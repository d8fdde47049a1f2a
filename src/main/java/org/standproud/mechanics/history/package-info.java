/** The force on the work as it runs through a revolution and along the pass, ready to be drawn. */
@NullMarked
package org.standproud.mechanics.history;

import org.jspecify.annotations.NullMarked;
