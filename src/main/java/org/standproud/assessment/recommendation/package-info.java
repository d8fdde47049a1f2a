/** What to change, how else to hold it and what to measure, for an assessed set-up. */
@NullMarked
package org.standproud.assessment.recommendation;

import org.jspecify.annotations.NullMarked;
