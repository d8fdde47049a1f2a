/** To be described. */
@NullMarked
package org.standproud.api.access;

import org.jspecify.annotations.NullMarked;
