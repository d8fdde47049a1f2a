/** Conditional requests (RFC 9110): a client revalidates what it has cached. */
@NullMarked
package org.standproud.api.conditional;

import org.jspecify.annotations.NullMarked;
