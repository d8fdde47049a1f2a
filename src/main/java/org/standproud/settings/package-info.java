/** Checks what the service is started with: unknown properties and values out of range. */
@NullMarked
package org.standproud.settings;

import org.jspecify.annotations.NullMarked;
