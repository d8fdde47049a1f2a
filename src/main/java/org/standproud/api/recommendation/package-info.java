/**
 * Recommendations over REST: what to change, how far the cut may go, other holds, what to measure.
 */
@NullMarked
package org.standproud.api.recommendation;

import org.jspecify.annotations.NullMarked;
