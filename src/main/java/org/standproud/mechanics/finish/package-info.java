/** What the pass leaves on the surface: feed marks, their grade, tram and size error. */
@NullMarked
package org.standproud.mechanics.finish;

import org.jspecify.annotations.NullMarked;
