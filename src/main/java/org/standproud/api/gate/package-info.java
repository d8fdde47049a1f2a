/** The gate every call passes: who asks, whether he may, and how often. */
@NullMarked
package org.standproud.api.gate;

import org.jspecify.annotations.NullMarked;
