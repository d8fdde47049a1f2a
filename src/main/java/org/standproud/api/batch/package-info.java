/** To be described. */
@NullMarked
package org.standproud.api.batch;

import org.jspecify.annotations.NullMarked;
