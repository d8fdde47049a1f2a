/** API keys: created, hashed, rotated, revoked, stored in the database. */
@NullMarked
package org.standproud.access.keys;

import org.jspecify.annotations.NullMarked;
