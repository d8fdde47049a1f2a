/** A recorded assessment read back for people to look at. */
@NullMarked
package org.standproud.web.recorded;

import org.jspecify.annotations.NullMarked;
