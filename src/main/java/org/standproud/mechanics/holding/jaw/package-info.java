/**
 * Rigid statics of stock between two jaws: where each jaw may bear, and what force across the jaws
 * tips the stock.
 */
@NullMarked
package org.standproud.mechanics.holding.jaw;

import org.jspecify.annotations.NullMarked;
