/** What keeps the service going: figures of what it does, and what is done by the clock. */
@NullMarked
package org.standproud.assessment.metrics;

import org.jspecify.annotations.NullMarked;
