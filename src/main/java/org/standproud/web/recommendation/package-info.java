/** Pages of recommendations: remedies, other holds, envelope, what to measure. */
@NullMarked
package org.standproud.web.recommendation;

import org.jspecify.annotations.NullMarked;
