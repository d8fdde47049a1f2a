/** Other ways to hold the same job, judged by the cards' limits for holding. */
@NullMarked
package org.standproud.advice.workholding;

import org.jspecify.annotations.NullMarked;
