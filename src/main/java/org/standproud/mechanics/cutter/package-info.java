/**
 * Whether the cutter itself stands the pass: how far it bends, whether it breaks, whether it bites
 * or rubs.
 */
@NullMarked
package org.standproud.mechanics.cutter;

import org.jspecify.annotations.NullMarked;
