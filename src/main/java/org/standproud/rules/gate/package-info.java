/**
 * The gate that every rule base passes before it goes into service: check, build, run the examples,
 * publish or refuse.
 */
@NullMarked
package org.standproud.rules.gate;

import org.jspecify.annotations.NullMarked;
