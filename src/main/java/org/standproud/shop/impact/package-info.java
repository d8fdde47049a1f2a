/** Judges past jobs again in the background. */
@NullMarked
package org.standproud.shop.impact;

import org.jspecify.annotations.NullMarked;
