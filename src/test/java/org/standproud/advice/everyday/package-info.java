/**
 * Set-ups as they come up in a shop every day, with the verdict of a good machinist, and what the
 * service says of them. Verdicts and reasons are common practice, no source.
 */
@NullMarked
package org.standproud.advice.everyday;

import org.jspecify.annotations.NullMarked;
