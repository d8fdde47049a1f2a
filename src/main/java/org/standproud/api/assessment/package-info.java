/** Assessments over HTTP: made, fetched, listed. */
@NullMarked
package org.standproud.api.assessment;

import org.jspecify.annotations.NullMarked;
