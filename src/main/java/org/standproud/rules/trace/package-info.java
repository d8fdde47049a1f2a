/** What every card said of one set-up: truths, values read and margins to flipping. */
@NullMarked
package org.standproud.rules.trace;

import org.jspecify.annotations.NullMarked;
