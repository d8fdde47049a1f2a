/**
 * Contact between stock, packing and jaws: line contact, joint stiffness, unilateral face contact,
 * jaw pressure.
 */
@NullMarked
package org.standproud.mechanics.holding.contact;

import org.jspecify.annotations.NullMarked;
