/** Assessments over HTTP: made, fetched, listed. */
@NullMarked
package org.standproud.api.assessments;

import org.jspecify.annotations.NullMarked;
