/** Many set-ups in one request, streamed: a line in, a line out, in constant memory. */
@NullMarked
package org.standproud.assessment.batch;

import org.jspecify.annotations.NullMarked;
