/** The journal of access: calls that were denied, and what was done with keys. */
@NullMarked
package org.standproud.access.journal;

import org.jspecify.annotations.NullMarked;
