/**
 * The engine: cards compiled into an immutable rule base and evaluated on the evidence of a set-up.
 */
@NullMarked
package org.standproud.rules.engine;

import org.jspecify.annotations.NullMarked;
