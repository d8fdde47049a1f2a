/** Tries cards that are being written on a set-up. */
@NullMarked
package org.standproud.shop.trial;

import org.jspecify.annotations.NullMarked;
