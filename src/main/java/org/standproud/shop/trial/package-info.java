/** Tries draft cards on a set-up. */
@NullMarked
package org.standproud.shop.trial;

import org.jspecify.annotations.NullMarked;
