/** JSON serialization of answers. */
@NullMarked
package org.standproud.api.json;

import org.jspecify.annotations.NullMarked;
