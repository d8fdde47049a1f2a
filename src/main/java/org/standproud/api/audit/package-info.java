/** What auditors ask over HTTP: decisions, replays, exports, counts, checks, retention. */
@NullMarked
package org.standproud.api.audit;

import org.jspecify.annotations.NullMarked;
