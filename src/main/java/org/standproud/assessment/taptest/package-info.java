/** Note and damping of a stock in its vise, from a recording of taps. */
@NullMarked
package org.standproud.assessment.taptest;

import org.jspecify.annotations.NullMarked;
