/** The catalogue over HTTP. */
@NullMarked
package org.standproud.api.catalogue;

import org.jspecify.annotations.NullMarked;
