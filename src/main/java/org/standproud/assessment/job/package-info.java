/** Whole jobs: read, planned and answered. Nothing is recorded; its passes can be, one by one. */
@NullMarked
package org.standproud.assessment.job;

import org.jspecify.annotations.NullMarked;
