/** Which unknown to measure first, and what the answer would be then. */
@NullMarked
package org.standproud.advice.ask;

import org.jspecify.annotations.NullMarked;
