/**
 * Vibration of the stock under the cutter: forced at the tooth-passing harmonics, and of its own
 * accord (chatter).
 */
@NullMarked
package org.standproud.mechanics.vibration;

import org.jspecify.annotations.NullMarked;
