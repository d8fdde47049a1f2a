/** Pages that help a shop measure. */
@NullMarked
package org.standproud.web.measurement;

import org.jspecify.annotations.NullMarked;
