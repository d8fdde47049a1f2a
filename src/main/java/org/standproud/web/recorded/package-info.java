/** Recorded assessments read back for pages and sheets. */
@NullMarked
package org.standproud.web.recorded;

import org.jspecify.annotations.NullMarked;
