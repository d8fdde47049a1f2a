/** Idempotent requests: sent twice with one key, judged once, answered twice. */
@NullMarked
package org.standproud.assessment.idempotency;

import org.jspecify.annotations.NullMarked;
