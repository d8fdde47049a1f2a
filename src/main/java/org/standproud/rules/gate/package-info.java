/**
 * The gate every rule base passes before it serves: check, build, run the examples, publish or
 * refuse.
 */
@NullMarked
package org.standproud.rules.gate;

import org.jspecify.annotations.NullMarked;
