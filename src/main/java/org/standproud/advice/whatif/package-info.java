/** Set-ups changed in one or a few places and judged again, each at most once. */
@NullMarked
package org.standproud.advice.whatif;

import org.jspecify.annotations.NullMarked;
