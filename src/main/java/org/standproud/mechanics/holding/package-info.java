/**
 * What a hold can take: margins against slip, tip and lift, and the stiffness of the root of the
 * stock, each as a band.
 */
@NullMarked
package org.standproud.mechanics.holding;

import org.jspecify.annotations.NullMarked;
