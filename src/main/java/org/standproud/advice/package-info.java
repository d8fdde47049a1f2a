/** What follows from the findings: a verdict, a score, confidence and cautions. */
@NullMarked
package org.standproud.advice;

import org.jspecify.annotations.NullMarked;
