/** Stores every answer, with everything it is based on, before it is sent. */
@NullMarked
package org.standproud.audit;

import org.jspecify.annotations.NullMarked;
