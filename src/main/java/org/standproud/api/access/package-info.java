/** Access over REST: API keys and the access journal. */
@NullMarked
package org.standproud.api.access;

import org.jspecify.annotations.NullMarked;
