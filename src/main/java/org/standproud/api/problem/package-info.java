/** RFC 9457 problems. */
@NullMarked
package org.standproud.api.problem;

import org.jspecify.annotations.NullMarked;
