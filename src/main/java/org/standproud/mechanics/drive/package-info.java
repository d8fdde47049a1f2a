/**
 * Whether the cut can pull the table ahead of its screw, and what a hand on the wheel does to the
 * feed.
 */
@NullMarked
package org.standproud.mechanics.drive;

import org.jspecify.annotations.NullMarked;
