/** Removes or masks old texts on a schedule, by the retention rule of the shop. */
@NullMarked
package org.standproud.assessment.retention;

import org.jspecify.annotations.NullMarked;
