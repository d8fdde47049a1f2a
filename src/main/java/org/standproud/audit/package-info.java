/** Keeps every answer, with all that it stood on, before it is sent. */
@NullMarked
package org.standproud.audit;

import org.jspecify.annotations.NullMarked;
