/** Two set-ups side by side: what was changed and what that did to the findings. */
@NullMarked
package org.standproud.advice.compare;

import org.jspecify.annotations.NullMarked;
