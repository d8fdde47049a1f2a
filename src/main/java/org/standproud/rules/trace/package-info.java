/** The trace of a set-up: truth, readings and margins of every card. */
@NullMarked
package org.standproud.rules.trace;

import org.jspecify.annotations.NullMarked;
