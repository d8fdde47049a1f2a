/** Removes or masks old texts on a schedule, as the retention rule of the shop says. */
@NullMarked
package org.standproud.assessment.retention;

import org.jspecify.annotations.NullMarked;
