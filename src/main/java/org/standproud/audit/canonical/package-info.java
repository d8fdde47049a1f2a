/**
 * Canonical JSON by RFC 8785: equal values have equal bytes, so that they can be hashed and
 * compared.
 */
@NullMarked
package org.standproud.audit.canonical;

import org.jspecify.annotations.NullMarked;
