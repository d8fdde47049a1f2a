/** The REST contract for shop systems. */
@NullMarked
package org.standproud.api;

import org.jspecify.annotations.NullMarked;
