/** What other cards would have said of past jobs, from their stored evidence. */
@NullMarked
package org.standproud.rules.impact;

import org.jspecify.annotations.NullMarked;
