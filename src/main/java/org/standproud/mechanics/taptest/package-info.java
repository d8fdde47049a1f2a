/** Reads a tap test of a part: its natural frequency and damping from a recording. */
@NullMarked
package org.standproud.mechanics.taptest;

import org.jspecify.annotations.NullMarked;
