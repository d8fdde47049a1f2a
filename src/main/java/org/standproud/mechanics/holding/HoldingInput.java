package org.standproud.mechanics.holding;

import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.setup.Hold;
import org.standproud.setup.Stock;

/**
 * What the holding of stock in a vise is computed from.
 *
 * @param hold the vise and how it grips; what is null in it is not known
 * @param stock the stock
 * @param load the force of the cut on the work
 * @param faces whether the gripped faces are oily
 */
public record HoldingInput(Hold hold, Stock stock, HoldingLoad load, FaceState faces) {}
