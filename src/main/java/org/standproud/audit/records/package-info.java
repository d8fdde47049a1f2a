/** Stores records before an answer is sent, and finds them again; on H2 and PostgreSQL alike. */
@NullMarked
package org.standproud.audit.records;

import org.jspecify.annotations.NullMarked;
