/** One byte-exact JSON text for one meaning, by RFC 8785, so that it can be hashed and compared. */
@NullMarked
package org.standproud.audit.canonical;

import org.jspecify.annotations.NullMarked;
