/** Records for auditors: search, open, verify, replay, accept. */
@NullMarked
package org.standproud.web.audit;

import org.jspecify.annotations.NullMarked;
