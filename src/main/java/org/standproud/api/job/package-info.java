/** Whole jobs over REST. */
@NullMarked
package org.standproud.api.job;

import org.jspecify.annotations.NullMarked;
