/** Standproud: checks, before the spindle starts, whether a milling set-up will hold. */
@NullMarked
package org.standproud;

import org.jspecify.annotations.NullMarked;
