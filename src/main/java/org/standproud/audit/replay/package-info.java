/** Gives a recorded answer again, or says what differs: versions, numbers, findings. */
@NullMarked
package org.standproud.audit.replay;

import org.jspecify.annotations.NullMarked;
