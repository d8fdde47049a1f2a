/** What a shop measures in five minutes, read for it. */
@NullMarked
package org.standproud.api.measurement;

import org.jspecify.annotations.NullMarked;
