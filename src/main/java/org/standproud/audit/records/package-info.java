/**
 * Puts records on disk before an answer is sent, and finds them again; the same on H2 and
 * PostgreSQL.
 */
@NullMarked
package org.standproud.audit.records;

import org.jspecify.annotations.NullMarked;
