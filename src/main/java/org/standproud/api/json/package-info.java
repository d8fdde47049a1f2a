/** How answers are written as JSON. */
@NullMarked
package org.standproud.api.json;

import org.jspecify.annotations.NullMarked;
