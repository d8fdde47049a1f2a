/** Many set-ups in one request, streamed: one line in, one line out, in constant memory. */
@NullMarked
package org.standproud.assessment.batch;

import org.jspecify.annotations.NullMarked;
