/** Recommendations for an assessed set-up: remedies, other holds, what to measure. */
@NullMarked
package org.standproud.assessment.recommendation;

import org.jspecify.annotations.NullMarked;
