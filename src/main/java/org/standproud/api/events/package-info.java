/** To be described. */
@NullMarked
package org.standproud.api.events;

import org.jspecify.annotations.NullMarked;
