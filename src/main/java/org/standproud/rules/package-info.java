/** Rule cards, their conditions and the engine that evaluates them. */
@NullMarked
package org.standproud.rules;

import org.jspecify.annotations.NullMarked;
