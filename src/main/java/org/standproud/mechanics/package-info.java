/** What mechanics says of a set-up: numbers with bands, each with its formula and its source. */
@NullMarked
package org.standproud.mechanics;

import org.jspecify.annotations.NullMarked;
