/** Which unknown to measure first, and what the answer would be then. */
@NullMarked
package org.standproud.advice.sensitivity;

import org.jspecify.annotations.NullMarked;
