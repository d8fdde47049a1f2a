/**
 * What to change, how far one may go, how else to hold it and what to measure, for a judged set-up.
 */
@NullMarked
package org.standproud.api.recommendation;

import org.jspecify.annotations.NullMarked;
