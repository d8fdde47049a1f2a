/** Runs every stage of the mechanics for one set-up and gathers what it says as evidence. */
@NullMarked
package org.standproud.mechanics.evidence.stage;

import org.jspecify.annotations.NullMarked;
