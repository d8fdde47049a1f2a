/** Changed set-ups, judged again, each at most once. */
@NullMarked
package org.standproud.advice.whatif;

import org.jspecify.annotations.NullMarked;
