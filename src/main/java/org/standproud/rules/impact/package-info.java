/** The impact of other cards on past jobs, from their stored evidence. */
@NullMarked
package org.standproud.rules.impact;

import org.jspecify.annotations.NullMarked;
