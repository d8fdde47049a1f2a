/**
 * The engine: cards built into one immutable rule base and evaluated against the evidence of a
 * set-up.
 */
@NullMarked
package org.standproud.rules.engine;

import org.jspecify.annotations.NullMarked;
