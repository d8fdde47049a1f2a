/** Checks the configuration at start: unknown properties and values out of range. */
@NullMarked
package org.standproud.settings;

import org.jspecify.annotations.NullMarked;
