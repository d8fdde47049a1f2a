/** Computes a recorded answer again, or reports what differs: versions, numbers, findings. */
@NullMarked
package org.standproud.audit.replay;

import org.jspecify.annotations.NullMarked;
