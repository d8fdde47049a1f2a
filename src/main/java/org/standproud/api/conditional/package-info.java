/** Conditional requests (RFC 9110): a caller asks whether what it keeps still holds. */
@NullMarked
package org.standproud.api.conditional;

import org.jspecify.annotations.NullMarked;
