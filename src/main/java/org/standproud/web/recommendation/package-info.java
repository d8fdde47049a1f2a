/** Pages on what to change, how else to hold it, how far it may go and what to measure. */
@NullMarked
package org.standproud.web.recommendation;

import org.jspecify.annotations.NullMarked;
