/** Metrics of the service. */
@NullMarked
package org.standproud.assessment.metrics;

import org.jspecify.annotations.NullMarked;
