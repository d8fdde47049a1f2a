/** Audit over REST: acceptances, replays, exports, counts, chain checks, retention. */
@NullMarked
package org.standproud.api.audit;

import org.jspecify.annotations.NullMarked;
