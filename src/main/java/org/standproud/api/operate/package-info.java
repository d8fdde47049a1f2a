/** What keeps the service going: figures of what it does, and what is done by the clock. */
@NullMarked
package org.standproud.api.operate;

import org.jspecify.annotations.NullMarked;
