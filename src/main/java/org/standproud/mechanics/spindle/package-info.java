/** Whether the spindle turns at that speed and has the power and torque for the pass. */
@NullMarked
package org.standproud.mechanics.spindle;

import org.jspecify.annotations.NullMarked;
