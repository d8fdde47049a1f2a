/** Keys that callers show: made, hashed, rotated, revoked, and kept in the database. */
@NullMarked
package org.standproud.access.keys;

import org.jspecify.annotations.NullMarked;
