/** Other ways to hold the same job, judged by the limits the cards set for holding. */
@NullMarked
package org.standproud.advice.workholding;

import org.jspecify.annotations.NullMarked;
