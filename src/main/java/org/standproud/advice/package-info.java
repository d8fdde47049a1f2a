/** From findings to advice: verdict, score, confidence and cautions. */
@NullMarked
package org.standproud.advice;

import org.jspecify.annotations.NullMarked;
