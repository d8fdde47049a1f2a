/** Batches over REST: NDJSON streams and CSV tables. */
@NullMarked
package org.standproud.api.batch;

import org.jspecify.annotations.NullMarked;
