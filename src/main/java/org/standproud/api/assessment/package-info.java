/** Assessments over REST: create, fetch, list. */
@NullMarked
package org.standproud.api.assessment;

import org.jspecify.annotations.NullMarked;
