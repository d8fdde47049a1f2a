/**
 * Plans a whole job, from the blank to the finished plate: a route of set-ups and passes, each
 * judged on the stock as it stands by then.
 *
 * <p>What the search costs: every set-up is judged with the draws of an assessment, about 10 ms
 * each, and the number of set-ups is bounded; the answer says how many were judged.
 */
@NullMarked
package org.standproud.advice.job;

import org.jspecify.annotations.NullMarked;
