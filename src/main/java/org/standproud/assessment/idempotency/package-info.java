/** A request that is sent twice with one key is judged once and answered twice. */
@NullMarked
package org.standproud.assessment.idempotency;

import org.jspecify.annotations.NullMarked;
